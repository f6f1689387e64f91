/** Money as it stands on paper: two places, thousands apart, the currency as the shop writes it. */
export const money = (amount: number | null, currency: string): string => {
  if (amount === null) return 'not known yet';
  const [whole = '0', cents = '00'] = amount.toFixed(2).split('.');
  return `${whole.replaceAll(/\B(?=(?:\d{3})+$)/g, ' ')}.${cents}${currency === '' ? '' : ` ${currency}`}`;
};

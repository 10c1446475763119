export const checkList = {
  /** The mark behind which a rule or a figure says where it comes from. */
  source: 'source',
}

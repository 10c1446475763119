export const languages = {
  /** Beside the choice. */
  label: 'language',
  notFetched: 'That language could not be loaded. Check the connection and try again.',
}

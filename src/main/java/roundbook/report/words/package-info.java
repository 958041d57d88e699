/**
 * The words of the pages in each language, and how numbers and quantities are written.
 *
 * <p>No other room but these of the report knows of languages. Quantities come with a key, not with
 * words; the bundle beside {@link roundbook.report.words.Words} says each in every language.
 */
package roundbook.report.words;

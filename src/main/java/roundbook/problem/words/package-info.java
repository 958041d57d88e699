/**
 * The sentences of all problems in every language.
 *
 * <p>A problem is a code, a place and values; nothing in it is in any language. The terminal and
 * the plain tables tell it in English, the workbook in the language of its job, and a later
 * revision in whatever language its own job asks for. So a sentence is added in one place a
 * language, and a test tells every problem that any fixture raises in each of them.
 */
package roundbook.problem.words;

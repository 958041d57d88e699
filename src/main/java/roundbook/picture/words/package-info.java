/** How drawings print lengths and words: in the job's unit and the workbook's language. */
package roundbook.picture.words;

/** How a cell of each role looks, and a template of those looks that a user may change. */
package roundbook.sheet.style;

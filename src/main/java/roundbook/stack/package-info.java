/** Placed logs, their rounds, the heights of their centre lines, and the gaps between them. */
package roundbook.stack;

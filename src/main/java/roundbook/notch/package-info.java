/** The trade's notch arithmetic and its limits, and nothing else. */
package roundbook.notch;

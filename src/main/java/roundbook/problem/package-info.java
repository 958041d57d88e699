/** What is wrong, where it stands, and how a person puts it right. */
package roundbook.problem;

/** A new plan from what was built, and what changes from one plan to another. */
package roundbook.replan;

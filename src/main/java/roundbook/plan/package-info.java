/** The whole answer: one pure function from a job to its plan. */
package roundbook.plan;

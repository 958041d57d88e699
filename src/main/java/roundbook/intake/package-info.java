/** Tables to a job: reads every cell by its meaning and collects every problem in one pass. */
package roundbook.intake;

/** Which log goes where and which way round, and an independent check of every such plan. */
package roundbook.rounds;

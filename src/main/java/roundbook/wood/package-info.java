/** Volumes, weights and balance points of sawn logs, and what their wood weighs. */
package roundbook.wood;

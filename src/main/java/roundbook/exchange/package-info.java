/** What other logs would do in the places of a plan: spares, substitutes, next best choices. */
package roundbook.exchange;

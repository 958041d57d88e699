/** Harvester production files (StanForD 2010, .hpr) to a table with a cut log a row. */
package roundbook.harvester;

/** Text files to tables and back; the only user of the CSV library. */
package roundbook.csv;

/** Lengths, slopes and units: exact arithmetic, reading and printing of every form a tape uses. */
package roundbook.units;

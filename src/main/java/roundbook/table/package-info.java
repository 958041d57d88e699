/** Tables as they were read: sheets of typed cells that know their address. */
package roundbook.table;

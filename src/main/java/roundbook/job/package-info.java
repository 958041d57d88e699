/** What the builder told us: rules, walls, openings, pins, and logs with their diameters. */
package roundbook.job;

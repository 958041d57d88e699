/**
 * The sheets after the walls, each of them one table or a few: levels, logs, openings, materials,
 * tags, pages at full size, doubts and settings.
 *
 * <p>{@link roundbook.report.list.ListSheets} is the door: it makes one sheet for each tab from the
 * levels on, in the order of the tabs.
 */
package roundbook.report.list;

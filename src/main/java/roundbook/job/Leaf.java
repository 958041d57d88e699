package roundbook.job;

import roundbook.units.Length;

/**
 * The door or sash, with its own frame if it has one, that is to stand between the bucks of an
 * opening.
 *
 * @param width across
 * @param height from bottom to top
 */
public record Leaf(Length width, Length height) {}

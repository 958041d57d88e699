package roundbook.intake;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Sorts the columns of a heading row into blocks of logs that stand side by side.
 *
 * <p>A block begins where a tag or a length stands again after the last block has a length and a
 * diameter, and only where a length and a diameter of its own follow, with a tag where the first
 * block has one: a second tag to the right, or the same measures in another unit, is no block.
 */
final class Blocks {
  private final List<List<Heading>> blocks = new ArrayList<>();
  private final List<Heading> pending = new ArrayList<>();
  private final List<Heading> all;
  private List<Heading> block = new ArrayList<>();

  private Blocks(List<Heading> all) {
    this.all = all;
  }

  /** Sorts headings, which stand by rising column. */
  static List<List<Heading>> of(List<Heading> headings) {
    return new Blocks(headings).sorted();
  }

  private List<List<Heading>> sorted() {
    for (int i = 0; i < all.size(); i++) {
      Heading heading = all.get(i);
      Field field = heading.field().orElse(null);
      boolean again = field != null && has(block, field);
      if (again && isStart(field) && isWhole(block) && isWhole(rest(i)) && isNamed(i)) {
        blocks.add(block);
        block = new ArrayList<>(pending);
        pending.clear();
        block.add(heading);
      } else if (again && isWhole(block)) {
        pending.add(heading);
      } else {
        block.add(heading);
      }
    }
    block.addAll(pending);
    blocks.add(block);
    return blocks;
  }

  private List<Heading> rest(int from) {
    return all.subList(from, all.size());
  }

  /** Returns whether a tag stands from a column on, or the block has none either. */
  private boolean isNamed(int from) {
    return hasName(rest(from)) || !hasName(block);
  }

  private static boolean hasName(List<Heading> headings) {
    return fields(headings).stream().anyMatch(Field::names);
  }

  private static boolean has(List<Heading> headings, Field field) {
    Set<Field> fields = fields(headings);
    return fields.contains(field) || field.names() && fields.stream().anyMatch(Field::names);
  }

  private static boolean isStart(Field field) {
    return field.names() || field == Field.LENGTH || field == Field.LOT;
  }

  private static boolean isWhole(List<Heading> headings) {
    Set<Field> fields = fields(headings);
    return fields.contains(Field.LENGTH)
        && fields.stream().anyMatch(field -> field.diameter() || field.girth());
  }

  private static Set<Field> fields(List<Heading> headings) {
    Set<Field> fields = EnumSet.noneOf(Field.class);
    headings.forEach(heading -> heading.field().ifPresent(fields::add));
    return fields;
  }
}

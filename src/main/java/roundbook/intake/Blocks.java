package roundbook.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import roundbook.job.Log.Bark;

/**
 * Sorts the columns of a heading row into blocks of logs that stand side by side.
 *
 * <p>A block begins where a tag or a length stands again after the last block has a length and a
 * diameter. Of two columns that mean the same, the one under bark or else the first is read.
 */
final class Blocks {
  private final List<Map<Field, Heading>> blocks = new ArrayList<>();
  private final List<Heading> others = new ArrayList<>();
  private final List<Heading> doubles = new ArrayList<>();
  private final List<Heading> pending = new ArrayList<>();
  private Map<Field, Heading> block = new EnumMap<>(Field.class);

  /** Takes the next column. */
  void add(Heading heading) {
    Field field = heading.field().orElse(null);
    if (field == null) {
      others.add(heading);
    } else if (!block.containsKey(field)) {
      block.put(field, heading);
    } else if (startsBlock(field) && isWhole(block)) {
      begin(heading, field);
    } else if (startsBlock(field) || !isWhole(block)) {
      repeated(heading, field);
    } else {
      pending.add(heading);
    }
  }

  private void begin(Heading heading, Field field) {
    blocks.add(block);
    block = new EnumMap<>(Field.class);
    pending.forEach(each -> block.put(each.field().orElseThrow(), each));
    pending.clear();
    block.put(field, heading);
  }

  /** Settles which of two columns of one meaning is read. */
  private void repeated(Heading heading, Field field) {
    Heading first = block.get(field);
    boolean swedish = field == Field.BUTT && !block.containsKey(Field.TAG);
    if (swedish && first.text().strip().equalsIgnoreCase("stock")) {
      block.put(Field.TAG, first.meaning(Field.TAG));
      block.put(Field.BUTT, heading);
    } else if (first.bark() == Bark.OVER && heading.bark() == Bark.OFF) {
      block.put(field, heading);
      others.add(first);
    } else {
      others.add(heading);
      boolean told = first.bark() == Bark.OFF && heading.bark() == Bark.OVER;
      if (!told && field != Field.REMARKS && field != Field.TAG) {
        doubles.add(heading);
      }
    }
  }

  /** Ends the row: what began no block goes to the last one. */
  Blocks end() {
    pending.forEach(each -> repeated(each, each.field().orElseThrow()));
    boolean lone = !blocks.isEmpty() && !isWhole(block);
    if (lone) {
      others.addAll(block.values());
    } else {
      blocks.add(block);
    }
    blocks.forEach(Blocks::settle);
    return this;
  }

  /** A tree's number names the log where nothing else does. */
  private static void settle(Map<Field, Heading> block) {
    if (!block.containsKey(Field.TAG) && block.containsKey(Field.STEM)) {
      block.put(Field.TAG, block.remove(Field.STEM).meaning(Field.TAG));
    }
  }

  private static boolean startsBlock(Field field) {
    return field == Field.TAG || field == Field.LENGTH || field == Field.STEM;
  }

  private static boolean isWhole(Map<Field, Heading> block) {
    return block.containsKey(Field.LENGTH)
        && block.keySet().stream().anyMatch(field -> field.diameter() || field.girth());
  }

  List<Map<Field, Heading>> blocks() {
    return blocks;
  }

  /** Returns the columns that are only carried through. */
  List<Heading> others() {
    return others;
  }

  /** Returns the columns that were not read because another means the same. */
  List<Heading> doubles() {
    return doubles;
  }
}

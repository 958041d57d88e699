package roundbook.intake.house;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Walls as the options of the command line tell them, not read yet.
 *
 * @param walls outside lengths of one pen, such as {@code 24x18}
 * @param pens those of pens in a row and of the passages between, such as {@code 16,10,16x18}
 * @param partitions where each partition stands, such as {@code 15-9} or {@code E:7}
 * @param wing the wall that a wing stands on, where, and how large it is: {@code S:14,14x12}
 */
public record HouseTold(
    Optional<String> walls, Optional<String> pens, List<String> partitions, Optional<String> wing) {
  /** Copies the list. */
  public HouseTold {
    partitions = List.copyOf(partitions);
  }

  /** Returns one pen, told in one text. */
  public static HouseTold ofWalls(String walls) {
    return new HouseTold(Optional.of(walls), Optional.empty(), List.of(), Optional.empty());
  }

  /** Returns whether nothing is told. */
  public boolean isEmpty() {
    return walls.isEmpty() && pens.isEmpty() && partitions.isEmpty() && wing.isEmpty();
  }

  /** Returns all of it in one text, as a file is named by. */
  public String words() {
    return Stream.of(walls.stream(), pens.stream(), partitions.stream(), wing.stream())
        .flatMap(each -> each)
        .collect(Collectors.joining(" "));
  }
}

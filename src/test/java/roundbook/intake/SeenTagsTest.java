package roundbook.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The tags remembered of a long tally, held against the runtime's own map. */
class SeenTagsTest {
  private final SeenTags seen = new SeenTags();
  private final Map<String, Integer> known = new HashMap<>();

  @Test
  void findsWhatAMapFinds() {
    SplittableRandom random = new SplittableRandom(3);
    for (int i = 0; i < 50_000; i++) {
      take(Integer.toString(random.nextInt(30_000)));
    }
    known.forEach((tag, number) -> assertEquals(number, seen.find(tag), tag));
    assertEquals(-1, seen.find("30001"));
  }

  @Test
  void tellsApartTagsWhoseUsualHashesAreAlike() {
    for (int i = 0; i < 1 << 14; i++) {
      StringBuilder tag = new StringBuilder();
      for (int bit = 0; bit < 14; bit++) {
        tag.append((i >> bit & 1) == 0 ? "Aa" : "BB");
      }
      take(tag.toString());
    }
    assertEquals(1 << 14, known.size());
    known.forEach((tag, number) -> assertEquals(number, seen.find(tag), tag));
  }

  @Test
  void tellsApartLettersThatAreHalfASign() {
    take("\uD83D");
    take("\uDE00");
    take("\uD83D\uDE00");
    take("?");
    take("");
    assertEquals(5, known.size());
  }

  /** Adds a tag unless it is there, and checks what is remembered of it. */
  private void take(String tag) {
    int next = known.size();
    int number = seen.find(tag);
    assertEquals(known.getOrDefault(tag, -1), number, tag);
    assertEquals(number, seen.add(tag, next % 3, next + 7, next * 31L), tag);
    if (number < 0) {
      known.put(tag, next);
      assertEquals(next, seen.find(tag), tag);
      assertEquals(next % 3, seen.sheet(next));
      assertEquals(next + 7, seen.row(next));
      assertEquals(next * 31L, seen.measures(next));
    }
  }
}

package roundbook.picture.letter;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import roundbook.picture.raster.Spot;

/**
 * The letters that drawings are lettered with, the project's own single-stroke forms.
 *
 * <p>No font of the machine is used, so that a drawing looks the same where none is installed.
 * Accented letters are put together from the letter and its mark. A character without a form shows
 * as an empty box.
 */
final class Alphabet {
  private static final String FORMS = "letters.txt";
  private static final int UNKNOWN = '☐';
  private static final double ARC_STEP = 10;
  private static final Alphabet STANDARD = new Alphabet();

  private final Map<Integer, Glyph> glyphs = new HashMap<>();

  private Alphabet() {
    for (String line : lines()) {
      if (!line.startsWith("##")) {
        String[] parts = line.split(" ", 3);
        glyphs.put(parts[0].codePointAt(0), glyph(parts[1], parts[2]));
      }
    }
  }

  /** Returns the one alphabet. */
  static Alphabet standard() {
    return STANDARD;
  }

  /** Returns whether a character has a form of its own. */
  boolean knows(int character) {
    return glyphs.containsKey(character) || decomposed(character).length > 1;
  }

  /** Returns the form of a character; a box when it has none. */
  Glyph glyph(int character) {
    Glyph own = glyphs.get(character);
    if (own != null) {
      return own;
    }
    int[] parts = decomposed(character);
    return parts.length > 1 ? composed(parts) : glyphs.get(UNKNOWN);
  }

  /** Returns a letter and its marks; only the character itself when a part has no form. */
  private int[] decomposed(int character) {
    String whole = Character.toString(character);
    int[] parts = Normalizer.normalize(whole, Normalizer.Form.NFD).codePoints().toArray();
    for (int part : parts) {
      if (!glyphs.containsKey(part)) {
        return new int[] {character};
      }
    }
    return parts;
  }

  /** Sets each mark over or under the middle of its letter. */
  private Glyph composed(int[] parts) {
    Glyph letter = glyphs.get(parts[0] == 'i' ? 'ı' : parts[0]);
    List<Glyph.Stroke> strokes = new ArrayList<>(letter.strokes());
    for (int i = 1; i < parts.length; i++) {
      boolean below = parts[i] == 0x327 || parts[i] == 0x328;
      Spot seat = new Spot(letter.width() / 2, below ? 0 : letter.top());
      glyphs.get(parts[i]).strokes().forEach(stroke -> strokes.add(stroke.moved(1, seat)));
    }
    return new Glyph(letter.width(), strokes);
  }

  /** Reads the strokes of one line of the resource. */
  private static Glyph glyph(String width, String strokes) {
    List<Glyph.Stroke> read = new ArrayList<>();
    for (String stroke : strokes.split(" ; ")) {
      boolean filled = stroke.startsWith("!");
      read.add(new Glyph.Stroke(path(filled ? stroke.substring(1) : stroke), filled));
    }
    return new Glyph(Double.parseDouble(width), read);
  }

  /** Reads one stroke: points are kept, arcs are turned into points. */
  private static List<Spot> path(String stroke) {
    List<Spot> path = new ArrayList<>();
    for (String token : stroke.strip().split(" ")) {
      String[] numbers = token.replace("(", "").replace(")", "").split(",");
      double[] values = new double[numbers.length];
      for (int i = 0; i < values.length; i++) {
        values[i] = Double.parseDouble(numbers[i]);
      }
      path.addAll(values.length == 2 ? List.of(new Spot(values[0], values[1])) : arc(values));
    }
    return path;
  }

  /** Returns points along an arc of centre x, y, radius x, y, first and last angle in degrees. */
  private static List<Spot> arc(double[] values) {
    double sweep = values[5] - values[4];
    int steps = (int) Math.ceil(Math.abs(sweep) / ARC_STEP);
    List<Spot> arc = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double angle = StrictMath.toRadians(values[4] + sweep * i / steps);
      double x = values[0] + values[2] * StrictMath.cos(angle);
      arc.add(new Spot(x, values[1] + values[3] * StrictMath.sin(angle)));
    }
    return arc;
  }

  /** Returns the lines of the resource that lies beside this class. */
  private static List<String> lines() {
    try (InputStream in = Alphabet.class.getResourceAsStream(FORMS);
        BufferedReader reader =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return reader.lines().toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}

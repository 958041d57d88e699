package roundbook.csv;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/**
 * A text whose stray quotes are mended, line by line, before it is cut into cells.
 *
 * <p>A line whose quotes are sound is left as it is. One that is not is cut loosely when that gives
 * as many cells as the first line has. Else lines are joined until the open field ends; when that
 * takes more lines than a remark has, the quotes of the line are taken as inch marks. The number of
 * lines never changes.
 */
final class MendedText {
  private static final int MOST_JOINED = 50;

  private final Lines lines;
  private final Quotes quotes;
  private int width;
  private boolean bare;

  MendedText(Lines lines, char separator) {
    this.lines = lines;
    this.quotes = new Quotes(separator);
  }

  /** Returns the next line, or several joined by line feeds; null after the last. */
  String next() throws IOException {
    String line = lines.next();
    if (line == null) {
      return null;
    }
    bare = quotes.opening(line, 0) < 0;
    String mended = bare ? line : mended(line);
    if (width == 0 && !line.isBlank()) {
      boolean sound = quotes.state(line) == Quotes.State.SOUND;
      width = sound ? quotes.count(line) : quotes.cutBare(line).size();
    }
    return mended;
  }

  /** Returns whether no cell of the last line begins with a quote. */
  boolean isBare() {
    return bare;
  }

  private String mended(String line) throws IOException {
    Quotes.State state = quotes.state(line);
    if (state == Quotes.State.SOUND && fits(line)) {
      return line;
    }
    List<String> loose = quotes.cutLoosely(line);
    if (loose != null && (width == 0 || loose.size() == width)) {
      return quotes.line(loose);
    }
    if (state == Quotes.State.SOUND) {
      return line;
    }
    String joined = state == Quotes.State.OPEN ? joined(line) : null;
    return joined == null ? quotes.line(quotes.cutBare(line)) : joined;
  }

  /** Returns whether sound quotes give as many cells as the first line has. */
  private boolean fits(String text) {
    return width == 0 || quotes.count(text) == width;
  }

  /** Joins lines until the open field ends; null, with the lines put back, when it does not. */
  private String joined(String line) throws IOException {
    List<String> more = new ArrayList<>();
    StringBuilder text = new StringBuilder(line);
    while (more.size() < MOST_JOINED && text.length() < Lines.LONGEST) {
      String next = lines.next();
      if (next == null) {
        break;
      }
      more.add(next);
      text.append('\n').append(next);
      String whole = text.toString();
      if (next.indexOf('"') >= 0 && quotes.state(whole) == Quotes.State.SOUND && fits(whole)) {
        return whole;
      }
    }
    for (int i = more.size() - 1; i >= 0; i--) {
      lines.putBack(more.get(i));
    }
    return null;
  }
}

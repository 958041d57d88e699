package roundbook.markup;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import roundbook.table.Cell;
import roundbook.table.Row;

/** Finds the tables of a web page, well-formed or not; a table in a cell comes after its own. */
final class WebPage {
  private static final Pattern TAG =
      Pattern.compile(
          "<!--.*?(?:-->|$)|<(script|style)\\b.*?(?:</\\1\\s*>|$)"
              + "|<(/?)([a-zA-Z][a-zA-Z0-9]*+)([^>]*+)>",
          Pattern.DOTALL | Pattern.CASE_INSENSITIVE);
  private static final Pattern SPAN =
      Pattern.compile("(?i)\\b(rowspan|colspan)\\s*=\\s*[\"']?(\\d{1,4})");
  private static final Pattern GONE = Pattern.compile("(?i)display\\s*:\\s*none|\\bhidden\\b");
  private static final int DEEPEST = 100;

  private final SheetTaker taker;
  private final Deque<OneTable> open = new ArrayDeque<>();
  private int tables;

  /** A table whose end has not come. */
  private static final class OneTable {
    private final RowMaker maker = new RowMaker();
    private final java.util.List<Row> rows = new java.util.ArrayList<>();
    private final StringBuilder text = new StringBuilder();
    private int row;
    private boolean inRow;
    private boolean inCell;
    private boolean hidden;
    private boolean struck;
    private int across = 1;
    private int down = 1;

    void begin(String name, String attributes) {
      switch (name) {
        case "tr" -> {
          endRow();
          inRow = true;
          hidden = GONE.matcher(attributes).find();
          maker.begin();
        }
        case "td", "th" -> {
          endCell();
          if (!inRow) {
            begin("tr", "");
          }
          inCell = true;
          across = span(attributes, "colspan");
          down = span(attributes, "rowspan");
          maker.skipCovered();
        }
        case "br", "p", "div", "li" -> text.append(text.length() == 0 ? "" : "\n");
        case "s", "strike", "del" -> struck = true;
        default -> {}
      }
    }

    private static int span(String attributes, String name) {
      Matcher matcher = SPAN.matcher(attributes);
      while (matcher.find()) {
        if (matcher.group(1).equalsIgnoreCase(name)) {
          return Math.max(1, Integer.parseInt(matcher.group(2)));
        }
      }
      return 1;
    }

    void endCell() {
      if (inCell) {
        String shown = text.toString().replace('\u00A0', ' ').replaceAll("[ \\t\\r]+", " ");
        maker.add(Cell.text(maker.column(), shown), down, struck);
        maker.goTo(maker.column() + across - 1);
      }
      text.setLength(0);
      inCell = false;
      struck = false;
    }

    void endRow() {
      endCell();
      if (inRow) {
        Row made = maker.end(++row, hidden);
        if (!made.isBlank()) {
          rows.add(made);
        }
      }
      inRow = false;
    }
  }

  WebPage(SheetTaker taker) {
    this.taker = taker;
  }

  /** Reads a page. */
  void read(String page) {
    Matcher tag = TAG.matcher(page);
    int done = 0;
    while (tag.find()) {
      text(page.substring(done, tag.start()));
      done = tag.end();
      if (tag.group(3) != null) {
        String name = tag.group(3).toLowerCase(Locale.ROOT);
        if (tag.group(2).isEmpty()) {
          begin(name, tag.group(4));
        } else {
          end(name);
        }
      }
    }
    while (!open.isEmpty()) {
      end("table");
    }
  }

  private void text(String piece) {
    OneTable table = open.peek();
    if (table != null && table.inCell) {
      table.text.append(Entities.decode(piece).replace('\n', ' '));
    }
  }

  private void begin(String name, String attributes) {
    if (name.equals("table") && open.size() < DEEPEST) {
      open.push(new OneTable());
    } else {
      Optional.ofNullable(open.peek()).ifPresent(table -> table.begin(name, attributes));
    }
  }

  private void end(String name) {
    OneTable table = open.peek();
    if (table == null) {
      return;
    }
    switch (name) {
      case "td", "th" -> table.endCell();
      case "tr" -> table.endRow();
      case "table" -> {
        table.endRow();
        open.pop();
        give(table);
      }
      default -> {}
    }
  }

  private void give(OneTable table) {
    if (table.rows.isEmpty()) {
      return;
    }
    tables++;
    boolean wanted = taker.begin("table " + tables);
    for (Row row : table.rows) {
      wanted = wanted && taker.row(row);
    }
    taker.end(false);
  }
}

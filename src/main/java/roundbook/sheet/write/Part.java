package roundbook.sheet.write;

/** The kinds of parts that a workbook's file has, as ECMA-376 names them. */
enum Part {
  WORKBOOK("officeDocument", "spreadsheetml.sheet.main"),
  SHEET("worksheet", "spreadsheetml.worksheet"),
  STYLES("styles", "spreadsheetml.styles"),
  TEXTS("sharedStrings", "spreadsheetml.sharedStrings"),
  DRAWING("drawing", "drawing"),
  CHART("chart", "drawingml.chart"),
  APPLICATION("extended-properties", "extended-properties"),
  CUSTOM("custom-properties", "custom-properties"),
  CORE(
      "http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties",
      "application/vnd.openxmlformats-package.core-properties+xml"),
  PICTURE("image", "image/png");

  private final String relation;
  private final String content;

  Part(String relation, String content) {
    this.relation = relation;
    this.content = content;
  }

  /** Returns what a reference to such a part is called. */
  String relation() {
    return relation.contains(":") ? relation : DrawingPart.RELATIONS + "/" + relation;
  }

  /** Returns what such a part is called in the list of parts. */
  String content() {
    return content.contains("/")
        ? content
        : "application/vnd.openxmlformats-officedocument." + content + "+xml";
  }
}

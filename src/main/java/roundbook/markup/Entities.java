package roundbook.markup;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns the named and numbered characters of a web page into themselves (HTML standard, 13.5). */
final class Entities {
  private static final Pattern ENTITY =
      Pattern.compile("&(?:#(\\d{1,7})|#[xX]([0-9a-fA-F]{1,6})|([a-zA-Z][a-zA-Z0-9]{1,7}));?");
  private static final int FIRST = 160;

  /** The names of the characters from 160 on, in their order. */
  private static final String LATIN =
      "nbsp iexcl cent pound curren yen brvbar sect uml copy ordf laquo not shy reg macr deg plusmn"
          + " sup2 sup3 acute micro para middot cedil sup1 ordm raquo frac14 frac12 frac34 iquest"
          + " Agrave Aacute Acirc Atilde Auml Aring AElig Ccedil Egrave Eacute Ecirc Euml Igrave"
          + " Iacute Icirc Iuml ETH Ntilde Ograve Oacute Ocirc Otilde Ouml times Oslash Ugrave"
          + " Uacute Ucirc Uuml Yacute THORN szlig agrave aacute acirc atilde auml aring aelig"
          + " ccedil egrave eacute ecirc euml igrave iacute icirc iuml eth ntilde ograve oacute"
          + " ocirc otilde ouml divide oslash ugrave uacute ucirc uuml yacute thorn yuml";

  private static final Map<String, String> NAMES = names();

  private Entities() {}

  private static Map<String, String> names() {
    Map<String, String> names = new HashMap<>();
    int letter = FIRST;
    for (String name : LATIN.split(" ")) {
      names.put(name, String.valueOf((char) letter++));
    }
    String[] others = {
      "amp", "&", "lt", "<", "gt", ">", "quot", "\"", "apos", "'", "prime", "\u2032", "Prime",
      "\u2033", "ndash", "\u2013", "mdash", "\u2014", "lsquo", "\u2018", "rsquo", "\u2019", "ldquo",
      "\u201C", "rdquo", "\u201D", "hellip", "\u2026", "thinsp", "\u2009", "minus", "\u2212",
      "check", "\u2713"
    };
    for (int i = 0; i < others.length; i += 2) {
      names.put(others[i], others[i + 1]);
    }
    return Map.copyOf(names);
  }

  static String decode(String text) {
    if (text.indexOf('&') < 0) {
      return text;
    }
    return ENTITY.matcher(text).replaceAll(found -> Matcher.quoteReplacement(one(found)));
  }

  private static String one(java.util.regex.MatchResult found) {
    if (found.group(3) != null) {
      return NAMES.getOrDefault(found.group(3), found.group());
    }
    int code =
        found.group(1) == null
            ? Integer.parseInt(found.group(2), 16)
            : Integer.parseInt(found.group(1));
    return Character.isValidCodePoint(code) ? Character.toString(code) : found.group();
  }
}

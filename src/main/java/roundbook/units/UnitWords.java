package roundbook.units;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The words and marks for units of length in the languages that tallies come in. */
final class UnitWords {
  private static final Map<String, LengthUnit> WORDS = words();

  private UnitWords() {}

  /** Finds the unit of a word or mark, whatever its case and with or without a closing stop. */
  static Optional<LengthUnit> find(String word) {
    String plain = word.strip().toLowerCase(Locale.ROOT);
    String bare = plain.endsWith(".") ? plain.substring(0, plain.length() - 1) : plain;
    return Optional.ofNullable(WORDS.get(bare));
  }

  private static Map<String, LengthUnit> words() {
    Map<String, LengthUnit> words = new HashMap<>();
    add(words, LengthUnit.INCH, "\" in ins inch inches zoll po pouce pouces pulg pulgada pulgadas");
    add(words, LengthUnit.INCH, "'' tum tuuma tuumaa ″ ”");
    add(words, LengthUnit.INCH, "tomme tommer duim pollice pollici polegada polegadas tolli colla");
    add(words, LengthUnit.INCH, "дюйм дюйма дюймов дюймы");
    add(words, LengthUnit.FOOT, "' ft feet foot fuss fuß pi pied pieds pie pies fot jalka jalkaa");
    add(words, LengthUnit.FOOT, "′ ’ lf fod piede piedi фут фута футов футы");
    add(words, LengthUnit.MILLIMETRE, "mm millimetre millimetres millimeter millimeters");
    add(words, LengthUnit.MILLIMETRE, "millimètre millimètres milímetro milímetros мм");
    add(words, LengthUnit.MILLIMETRE, "milimetro milimetros millimetro millimetri");
    add(words, LengthUnit.CENTIMETRE, "cm cms centimetre centimetres centimeter centimeters");
    add(words, LengthUnit.CENTIMETRE, "zentimeter centimètre centimètres centímetro centímetros");
    add(words, LengthUnit.CENTIMETRE, "centimetro centimetros centimetri см");
    add(words, LengthUnit.DECIMETRE, "dm decimetre decimetres decimeter decimeters dezimeter дм");
    add(words, LengthUnit.METRE, "m mtr mtrs metre metres meter meters mètre mètres metro metros");
    add(words, LengthUnit.METRE, "metri metriä lfm м");
    return Map.copyOf(words);
  }

  private static void add(Map<String, LengthUnit> words, LengthUnit unit, String spellings) {
    for (String spelling : spellings.split(" ")) {
      words.put(spelling, unit);
    }
  }
}

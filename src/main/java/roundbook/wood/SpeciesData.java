package roundbook.wood;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import roundbook.wood.Species.Basis;
import roundbook.wood.Species.Figure;
import roundbook.wood.Species.Property;

/**
 * The figures of the species, with what is known of where each was read.
 *
 * <p>A row is name | Latin name | basis, radial, tangential, volumetric shrinkage | fibre
 * saturation | specific gravity, green weight | basis, heartwood and sapwood moisture. R was read
 * in a copy of the source, M is from memory, - is not known.
 */
final class SpeciesData {
  private static final String ROWS =
      """
        northern white cedar | Thuja occidentalis | R 2.2 4.9 7.2 | 30 | 0.29 36.0 | - - -
        western redcedar | Thuja plicata | R 2.4 5.0 6.8 | 18 | 0.31 27.0 | R 58 249
        Alaska yellow cedar | Cupressus nootkatensis | R 2.8 6.0 9.2 | 28 | 0.42 45.0 | R 32 166
        eastern redcedar | Juniperus virginiana | R 3.1 4.7 7.8 | 30 | 0.44 37.0 | R 33 -
        incense cedar | Calocedrus decurrens | R 3.3 5.2 7.7 | 30 | 0.35 45.0 | R 40 213
        coast Douglas-fir | Pseudotsuga menziesii | R 4.8 7.6 12.4 | 28 | 0.45 38.0 | R 37 115
        balsam fir | Abies balsamea | R 2.9 6.9 11.2 | 30 | 0.33 45.0 | R 88 173
        grand fir | Abies grandis | R 3.4 7.5 11.0 | 30 | 0.35 45.0 | R 91 136
        noble fir | Abies procera | R 4.3 8.3 12.4 | 30 | 0.37 30.0 | R 34 115
        subalpine fir | Abies lasiocarpa | R 2.6 7.4 9.4 | 30 | 0.31 28.0 | - - -
        white fir | Abies concolor | R 3.3 7.0 9.8 | 30 | 0.37 47.0 | R 98 160
        eastern hemlock | Tsuga canadensis | R 3.0 6.8 9.7 | 30 | 0.38 50.0 | R 97 119
        mountain hemlock | Tsuga mertensiana | R 4.4 7.1 11.1 | 30 | 0.42 44.0 | - - -
        western hemlock | Tsuga heterophylla | R 4.2 7.8 12.4 | 28 | 0.42 41.0 | R 85 170
        western larch | Larix occidentalis | R 4.5 9.1 14.0 | 28 | 0.48 48.0 | R 54 119
        jack pine | Pinus banksiana | R 3.7 6.6 10.3 | 30 | 0.4 50.0 | - - -
        loblolly pine | Pinus taeda | R 4.8 7.4 12.3 | 26 | 0.47 53.0 | R 33 110
        lodgepole pine | Pinus contorta | R 4.3 6.7 11.1 | 30 | 0.38 39.0 | R 41 120
        longleaf pine | Pinus palustris | R 5.1 7.5 12.2 | 26 | 0.54 55.0 | R 31 106
        shortleaf pine | Pinus echinata | R 4.6 7.7 12.3 | 26 | 0.47 52.0 | M 32 122
        slash pine | Pinus elliottii | R 5.4 7.6 12.1 | 26 | 0.54 58.0 | - - -
        Engelmann spruce | Picea engelmannii | R 3.8 7.1 11.0 | 30 | 0.33 39.0 | R 51 173
        eastern white pine | Pinus strobus | M 2.1 6.1 8.2 | 30 | 0.34 35.0 | - - -
        ponderosa pine | Pinus ponderosa | M 3.9 6.2 9.7 | 30 | 0.38 45.0 | M 40 148
        red pine | Pinus resinosa | M 3.8 7.2 11.3 | 30 | 0.41 42.0 | M 32 134
        sugar pine | Pinus lambertiana | M 2.9 5.6 7.9 | 30 | 0.34 48.8 | M 98 219
        western white pine | Pinus monticola | M 4.1 7.4 11.8 | 30 | 0.36 35.0 | M 62 148
        pitch pine | Pinus rigida | M 4.0 7.1 10.9 | 30 | 0.47 50.0 | - - -
        Virginia pine | Pinus virginiana | M 4.2 7.2 11.9 | 30 | 0.45 50.0 | - - -
        black spruce | Picea mariana | M 4.1 6.8 11.3 | 30 | 0.38 35.0 | M 34 128
        red spruce | Picea rubens | M 3.8 7.8 11.8 | 30 | 0.37 34.0 | M 34 128
        Sitka spruce | Picea sitchensis | M 4.3 7.5 11.5 | 28 | 0.33 33.0 | M 41 142
        white spruce | Picea glauca | M 4.7 8.2 13.7 | 30 | 0.37 35.0 | M 34 128
        tamarack | Larix laricina | M 3.7 7.4 13.6 | 30 | 0.49 47.0 | M 49 -
        baldcypress | Taxodium distichum | M 3.8 6.2 10.5 | 30 | 0.42 51.0 | R 121 171
        old-growth redwood | Sequoia sempervirens | M 2.6 4.4 6.8 | 30 | 0.36 50.0 | M 86 210
        quaking aspen | Populus tremuloides | R 3.5 6.7 11.5 | 30 | 0.35 50.0 | R 95 113
        bigtooth aspen | Populus grandidentata | R 3.3 7.9 11.8 | 30 | 0.36 43.0 | R 95 113
        yellow-poplar | Liriodendron tulipifera | R 4.6 8.2 12.7 | 31 | 0.4 48.7 | R 83 106
        American chestnut | Castanea dentata | R 3.4 6.7 11.6 | 30 | 0.4 55.0 | M 120 -
        white oak | Quercus alba | R 5.6 10.5 16.3 | 30 | 0.6 63.0 | R 64 78
        northern red oak | Quercus rubra | R 4.0 8.6 13.7 | 30 | 0.56 64.0 | R 80 69
        white ash | Fraxinus americana | R 4.9 7.8 13.3 | 30 | 0.55 50.0 | R 46 44
        American beech | Fagus grandifolia | R 5.5 11.9 17.2 | 30 | 0.56 54.0 | R 55 72
        paper birch | Betula papyrifera | R 6.3 8.6 16.2 | 30 | 0.48 52.0 | R 89 72
        sugar maple | Acer saccharum | R 4.8 9.9 14.7 | 30 | 0.56 55.0 | R 65 72
        black walnut | Juglans nigra | R 5.5 7.8 12.8 | 30 | 0.51 57.0 | M 90 73
        black cherry | Prunus serotina | R 3.7 7.1 11.5 | 30 | 0.47 45.0 | R 58 -
        American basswood | Tilia americana | R 6.6 9.3 15.8 | 30 | 0.32 41.0 | R 81 133
        Norway spruce | Picea abies | M 3.6 7.8 11.9 | 30 | 0.36 35.8 | - - -
        Scots pine | Pinus sylvestris | M 4.0 7.7 12.1 | 30 | 0.43 47.3 | - - -
      """;

  /** What tallies also call them, each as: name = other name, other name. */
  private static final String OTHER_NAMES =
      """
        northern white cedar = white cedar, eastern white cedar, arborvitae
        western redcedar = wrc
        Alaska yellow cedar = Alaska cedar, yellow cedar
        coast Douglas-fir = coastal Douglas-fir
        subalpine fir = alpine fir
        eastern hemlock = Canada hemlock
        tamarack = eastern larch, hackmatack
        eastern white pine = white pine, northern white pine
        ponderosa pine = western yellow pine
        red pine = Norway pine
        baldcypress = bald cypress, cypress
        old-growth redwood = redwood
        quaking aspen = trembling aspen
        bigtooth aspen = large-toothed aspen
        yellow-poplar = tulip poplar, tulipwood
        northern red oak = red oak
        sugar maple = hard maple
        paper birch = white birch
        Norway spruce = European spruce, fichte, gran, kuusi, épicéa
        Scots pine = Scotch pine, European redwood, kiefer, tall, mänty
      """;

  /** Names that mean any of several, each as: name = species, species. */
  private static final String KINDS =
      """
        southern pine = loblolly pine, longleaf pine, shortleaf pine, slash pine
        southern yellow pine = loblolly pine, longleaf pine, shortleaf pine, slash pine
        yellow pine = loblolly pine, longleaf pine, shortleaf pine, slash pine
        douglas fir = coast Douglas-fir
        doug fir = coast Douglas-fir
        poplar = quaking aspen, bigtooth aspen, yellow-poplar
      """;

  /** Kinds in other languages, each as: kind = word, word. */
  private static final String KIND_WORDS =
      """
        pine = pin, pino
        spruce = épinette
        fir = tanne, abeto, sapin
        larch = mélèze, lärche
        oak = eiche, ek, tammi
      """;

  private static final String HANDBOOK = "Wood Handbook, USDA Forest Products Laboratory, ";
  private static final String SHRINKAGE = HANDBOOK + "Table 4-3";
  private static final String EUROPEAN = "European handbook values";
  private static final String MOISTURE = HANDBOOK + "Table 4-1";
  private static final String SATURATION = "ICC 400 section 304, second-hand";
  private static final String GREEN = "USDA Forest Service, FIA wood and bark weight table";

  private SpeciesData() {}

  static List<Species> read() {
    return ROWS.lines().map(SpeciesData::row).toList();
  }

  static Map<String, List<String>> otherNames() {
    return lists(OTHER_NAMES);
  }

  static Map<String, List<String>> kinds() {
    return lists(KINDS);
  }

  static Map<String, List<String>> kindWords() {
    return lists(KIND_WORDS);
  }

  private static Map<String, List<String>> lists(String block) {
    Map<String, List<String>> lists = new LinkedHashMap<>();
    for (String line : block.lines().toList()) {
      String[] sides = line.split("=");
      lists.put(sides[0].trim(), Arrays.stream(sides[1].split(",")).map(String::trim).toList());
    }
    return lists;
  }

  private static Species row(String line) {
    String[] cell = line.trim().split(" \\| ");
    Map<Property, Figure> figures = new EnumMap<>(Property.class);
    String source = isEuropean(cell) ? EUROPEAN : SHRINKAGE;
    List<Property> shrinks = List.of(Property.RADIAL, Property.TANGENTIAL, Property.VOLUMETRIC);
    put(figures, shrinks, cell[2], source);
    put(figures, List.of(Property.SATURATION), "R " + cell[3], SATURATION);
    put(figures, List.of(Property.GRAVITY, Property.GREEN_WEIGHT), "R " + cell[4], GREEN);
    List<Property> wet = List.of(Property.HEARTWOOD_MOISTURE, Property.SAPWOOD_MOISTURE);
    put(figures, wet, cell[5], MOISTURE);
    return new Species(cell[0], 0, cell[1], figures);
  }

  private static boolean isEuropean(String[] cell) {
    return cell[1].equals("Picea abies") || cell[1].equals("Pinus sylvestris");
  }

  /** The first word is the basis of the values that follow it. */
  private static void put(
      Map<Property, Figure> figures, List<Property> properties, String cell, String source) {
    String[] words = cell.split(" ");
    Basis basis = words[0].equals("M") ? Basis.MEMORY : Basis.READ;
    for (int i = 0; i < properties.size(); i++) {
      if (!words[i + 1].equals("-")) {
        double value = Double.parseDouble(words[i + 1]);
        figures.put(properties.get(i), new Figure(value, basis, source, 0));
      }
    }
  }
}

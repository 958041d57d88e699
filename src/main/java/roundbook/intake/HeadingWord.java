package roundbook.intake;

import java.util.HashMap;
import java.util.Map;

/**
 * What a single word of a heading means, in the languages that tallies come in.
 *
 * <p>Words stand here in small letters without accents: English, German, French, Swedish, Finnish
 * and Spanish.
 */
enum HeadingWord {
  /** Along the log. */
  LENGTH(
      "length len lgth lng lgt lange laenge longueur long largo longitud langd pituus stammlange"
          + " stammlaenge stocklangd loglength holzlange"),
  /** The thick end. */
  BUTT(
      "butt bottom large big led le thick rootend stockende stammfuss unten dick dicke dickes gros"
          + " souche base rot rotanda grovanda tyvi tyven culata coz basal mayor grueso gruesa lger"),
  /** The thick end in German, the log in Swedish. */
  STOCK("stock"),
  /** The thick end, or the unit of a length. */
  FOOT_END("fuss pied pieds"),
  /** Halfway along. */
  MID(
      "mid middle center centre ctr midpoint mitte mitten mitt milieu median mediane mi keski keskus"
          + " keskelta centro central medio media mitad half halfway"),
  /** The thin end. */
  TIP(
      "tip top small little thin sed se smaller zopf zopfende oben dunn dunne dunnes fin petit cime"
          + " topp toppanda klenanda latva latvan punta menor delgado delgada smler"),
  /** Through the log. */
  DIAMETER(
      "dia diam diameter diameters d durchmesser durchm dmr diametre diametro lapimitta halkaisija"),
  /** Round the log. */
  GIRTH(
      "girth circumference circ circumf umfang omkrets circonference circonf perimeter perimetro"
          + " perimetre ymparysmitta circunferencia cintura gth"),
  /** At breast height of a standing tree. */
  BREAST(
      "dbh bhd breast dap dhp brusthohe brusthohendurchmesser brosthojd rinnankorkeus"
          + " rinnankorkeuslapimitta pecho poitrine d13"),
  /** The kind of tree. */
  SPECIES(
      "species sp spp wood timber art baumart holzart holz essence espece traslag tradslag puulaji especie"
          + " madera spec"),
  /** The log itself. */
  TAG(
      "log logs logno lognr logid tag id tagno label bille grume grumes stocknr stocknummer tronco"
          + " troza rollizo tukki tukin tunnus barcode ident kennung los"),
  /** The tree that it was cut from. */
  STEM("stem tree stamm stammnr stammnummer baum baumnr arbre tige trad stam runko arbol fuste"),
  /** A number that names it. */
  NUMBER("no nr num number nummer numero nro n piece pce pc stk_nr lfd # ref serial nbr"),
  /** How many alike. */
  COUNT(
      "qty quantity count pieces pcs stuck stuckzahl stk anzahl quantite nombre nb antal kpl lkm"
          + " cantidad"),
  /** The bark. */
  BARK("bark rinde ecorce kuori kuoren corteza"),
  /** Measured over the bark. */
  OVER("over ob mit sur pa paalta con outside"),
  /** Measured under the bark, or peeled. */
  UNDER("under ub off peeled ohne sous sin inside ib kuoretta alta"),
  /** How bent it is. */
  SWEEP("sweep bow crook krummung fleche krok lenkous curvatura pfeilhohe"),
  /** What it is kept for. */
  KEEP("keep use reserve reserved verwendung"),
  /** The wall it is wanted on. */
  WALL("wall wand mur vagg seina muro pared"),
  /** The round it is wanted in. */
  ROUND("round course runde rang varv kerta vuelta hilada"),
  /** Whether to leave it out. */
  SKIP("skip omit reject cull exclude"),
  /** How far from an end. */
  DISTANCE("from far distance abstand avstand etaisyys distancia"),
  /** An upper log. */
  UPPER("upper"),
  /** Which part of the stem. */
  PART("part section position teil"),
  /** Diameters at many places. */
  PROFILE("profile stations profil"),
  /** Free text. */
  REMARKS(
      "remarks remark notes note comment comments bemerkung bemerkungen remarque remarques anm"
          + " anmarkning huomautus huom observaciones notas defects"),
  /** Of something, as in a number of logs. */
  OF("of de der"),
  /** At a place. */
  AT("at bei vid a"),
  /** A quantity that no diameter or length is. */
  FOREIGN(
      "volume vol price value weight wt grade class quality date time taper m3 ft3 bf board fbm"
          + " cubic scale trim trimmed height merch crown age kg lb cost klasse volumen poids prix"
          + " tilavuus volym hinta klass thickness allowance bd mbf cunit cbm fm buck deck load"
          + " truck lot row total cum");

  private static final Map<String, HeadingWord> ALL = all();

  private final String spellings;

  HeadingWord(String spellings) {
    this.spellings = spellings;
  }

  /** Returns the meaning of a word; null when it has none here. */
  static HeadingWord of(String word) {
    return ALL.get(word);
  }

  private static Map<String, HeadingWord> all() {
    Map<String, HeadingWord> all = new HashMap<>();
    for (HeadingWord meaning : values()) {
      for (String word : meaning.spellings.split(" ")) {
        all.put(word, meaning);
      }
    }
    return Map.copyOf(all);
  }
}

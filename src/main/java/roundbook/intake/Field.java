package roundbook.intake;

import java.util.List;
import java.util.Optional;

/** What a column of a tally means, with the words that yards write over it. */
enum Field {
  TAG(
      "log|log id|logid|id|tag|tag no|log no|log nr|log number|no|nr|num|number|piece|piece no|stem|"
          + "#|log #|stamm|stamm nr|stammnr|nummer|bille|grume|numero|n|stock nr|stocknr|tronco|"
          + "troza|tukki|runko|tunnus|stockens nr|label"),
  LENGTH(
      "length|len|lgth|log length|länge|laenge|stammlänge|longueur|long|längd|langd|stocklängd|"
          + "pituus|largo|longitud|l"),
  BUTT(
      "butt|butt dia|butt diameter|butt d|butt end|bottom|bottom dia|large end|large end dia|"
          + "large end diameter|led|l e dia|le dia|big end|stock|stockende|fuss|dicke ende|unten|"
          + "gros bout|pied|base|rotända|rot|rotdiameter|tyvi|tyviläpimitta|culata|coz|basal|"
          + "diámetro mayor|butt ob|butt ub|stammfuß|stammfuss"),
  MID(
      "mid|middle|mid dia|middle dia|mid diameter|middle diameter|ctr dia|center|centre|center dia|"
          + "centre dia|mitte|mitt|mittendurchmesser|mitten|milieu|médian|mediane|médiane|mitt "
          + "diameter|mittdiameter|keski|keskiläpimitta|centro|medio|mitad|mid ob|mid ub"),
  TIP(
      "tip|tip dia|tip diameter|top|top dia|top diameter|small end|small end dia|small end diameter|"
          + "sed|s e dia|se dia|little end|zopf|zopfende|oben|fin bout|petit bout|cime|topp|"
          + "toppända|toppdiameter|latva|latvaläpimitta|punta|diámetro menor|extremo delgado|"
          + "tip ob|tip ub|top ob|top ub"),
  DBH("dbh|bhd|breast height|diameter at breast height|brusthöhendurchmesser|dap"),
  BUTT_GIRTH("butt girth|butt circumference|butt circ|umfang stock|girth butt"),
  MID_GIRTH("girth|mid girth|circumference|circ|umfang|omkrets|circonférence|girth mid|mid circ"),
  TIP_GIRTH("tip girth|tip circumference|tip circ|top girth|girth tip|umfang zopf"),
  SPECIES(
      "species|sp|spp|wood|timber|art|baumart|holzart|essence|espèce|espece|träslag|tradslag|"
          + "trädslag|puulaji|especie|madera"),
  COUNT("qty|quantity|count|pieces|pcs|stück|stk|anzahl|quantité|antal|kpl|cantidad"),
  BARK("bark|rinde|écorce|bark kuori|kuori|corteza"),
  SWEEP("sweep|bow|crook|krümmung|flèche|krök|lenkous|curvatura"),
  KEEP("keep for|keep|use|reserve|reserve for"),
  WALL("wall|wand|mur|vägg|seinä|muro|pared"),
  ROUND("round|course|runde|rang|varv|kerta|vuelta"),
  SKIP("skip|leave out|reject|cull"),
  MID_AT("measured from butt|mid measured at|mid at|measured how far from the butt end"),
  PART("butt log or upper log|butt or upper|log position|part|section of stem"),
  REMARKS(
      "remarks|remark|notes|note|comment|comments|bemerkung|bemerkungen|remarques|anm|"
          + "anmärkning|huomautus|observaciones|notas");

  private final List<String> words;

  Field(String words) {
    this.words = List.of(words.split("\\|"));
  }

  boolean diameter() {
    return this == BUTT || this == MID || this == TIP;
  }

  boolean girth() {
    return this == BUTT_GIRTH || this == MID_GIRTH || this == TIP_GIRTH;
  }

  /** Returns the diameter that a girth stands for; itself otherwise. */
  Field asDiameter() {
    return switch (this) {
      case BUTT_GIRTH -> BUTT;
      case MID_GIRTH -> MID;
      case TIP_GIRTH -> TIP;
      default -> this;
    };
  }

  static Optional<Field> of(String plainHeading) {
    for (Field field : values()) {
      if (field.words.contains(plainHeading)) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }
}

package roundbook.report.list;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import roundbook.page.Cell;
import roundbook.page.Cell.Format;
import roundbook.page.Role;
import roundbook.report.frame.Cells;
import roundbook.report.frame.CrewContext;
import roundbook.report.frame.ListSheet;
import roundbook.report.words.Decimals;
import roundbook.takeoff.Settling;
import roundbook.takeoff.Settling.Moistures;
import roundbook.takeoff.Settling.SpeciesCount;
import roundbook.takeoff.Top.WallTop;
import roundbook.units.Length;
import roundbook.units.LengthUnit;
import roundbook.wood.Shrinkage;
import roundbook.wood.Species;
import roundbook.wood.Species.Basis;
import roundbook.wood.Species.Figure;
import roundbook.wood.Species.Property;

/** The part of the Heights sheet on shrinkage: moisture, species with their sources, losses. */
final class SettlingPart {
  private final CrewContext context;
  private final Settling settling;
  private final Cells cells;
  private final ListSheet list;

  SettlingPart(CrewContext context, ListSheet list) {
    this.context = context;
    this.settling = context.plan().takeoff().settling();
    this.cells = new Cells(context);
    this.list = list;
  }

  void write() {
    list.heading(context.text("settling.heading"));
    list.text(Role.PLAIN, moisture());
    species();
    losses();
    list.text(Role.CAUTION, context.text("settling.caution"));
  }

  private String moisture() {
    Moistures moisture = settling.moisture();
    String now =
        moisture
            .now()
            .map(percent -> context.text("settling.percent", plain(percent)))
            .orElseGet(() -> context.text("settling.green"));
    String source = moisture.source().name().toLowerCase(Locale.ROOT);
    Optional<Settling.Air> air = moisture.air();
    return context.text(
        "settling.moisture." + source,
        now,
        plain(moisture.service()),
        air.map(each -> plain(each.degrees())).orElse(""),
        context.rules().metric() ? "°C" : "°F",
        air.map(each -> plain(each.humidity())).orElse(""));
  }

  private void species() {
    list.spans(5, 2, 2, 2, 2, 3, 8).headOf("settling.species.head");
    settling.kinds().forEach(kind -> list.row(kind(kind)));
    list.text(Role.PLAIN, context.text("settling.governing", name(settling.governing())));
  }

  private List<Cell> kind(SpeciesCount kind) {
    Species species = kind.match().species();
    String name = name(species) + (kind.match().standIn() ? " ▲" : "");
    return List.of(
        cells.text(name),
        cells.count(kind.logs()),
        percent(species, Property.RADIAL),
        percent(species, Property.TANGENTIAL),
        percent(species, Property.SATURATION),
        cells.word(species.fromMemory() ? "settling.memory" : "settling.read"),
        cells.text(source(species, kind.match().standIn())));
  }

  private Cell percent(Species species, Property property) {
    return Cell.number(Math.round(species.value(property) * 10) / 10.0)
        .role(Role.BODY_CENTRE)
        .format(Format.DECIMAL_1);
  }

  /** Names the sources of the figures shown, each once, and what of them is from memory. */
  private String source(Species species, boolean standIn) {
    List<String> parts = new ArrayList<>();
    if (standIn) {
      parts.add(context.text("settling.stand_in"));
    }
    List.of(Property.RADIAL, Property.SATURATION, Property.GREEN_WEIGHT).stream()
        .flatMap(property -> species.figure(property).stream())
        .map(this::source)
        .distinct()
        .forEach(parts::add);
    return parts.stream().collect(Collectors.joining("; "));
  }

  private String source(Figure figure) {
    String source =
        figure.kinds() == 0
            ? figure.source()
            : context.text("settling.mean_source", figure.kinds(), figure.source());
    return figure.basis() == Basis.MEMORY ? context.text("settling.from_memory", source) : source;
  }

  private String name(Species species) {
    return species.kinds() == 0
        ? species.common()
        : context.text("settling.mean_name", species.common(), species.kinds());
  }

  private void losses() {
    list.spans(9, 3, 4, 4, 4).headOf("settling.head");
    Length gap = context.rules().gap();
    Length thickness = context.rules().thickness();
    double slope = context.rules().slope().ratio();
    for (WallTop top : context.plan().takeoff().top().orElseThrow().walls()) {
      String name = context.text("settling.wall", top.wall().name());
      loss(name, top.middle(), share -> share.lost(top.middle().inches()));
    }
    boolean metric = context.rules().metric();
    Length high = metric ? Length.ofMillimetres(1000) : Length.ofInches(12);
    loss(context.text("settling.post"), high, share -> share.lost(high.inches()));
    loss(context.text("settling.gap"), gap, share -> share.lost(gap.inches()));
    loss(
        context.text("settling.shoulder"),
        thickness,
        share -> share.shoulderOpening(thickness.inches()));
    loss(
        context.text("settling.hook"),
        thickness,
        share -> share.hookOpening(slope, thickness.inches()));
  }

  private void loss(String name, Length now, ToDoubleFunction<Shrinkage> lost) {
    list.row(
        cells.text(name),
        cells.tape(now),
        lost(settling.radial(), lost),
        lost(settling.mean(), lost).role(Role.BODY_BOLD).align(Cell.Align.CENTRE),
        lost(settling.tangential(), lost));
  }

  private Cell lost(Shrinkage share, ToDoubleFunction<Shrinkage> lost) {
    return cells.printed(Length.of(lost.applyAsDouble(share), LengthUnit.INCH));
  }

  private String plain(double number) {
    return context.words().number(Decimals.plain(Math.round(number * 10) / 10.0));
  }
}

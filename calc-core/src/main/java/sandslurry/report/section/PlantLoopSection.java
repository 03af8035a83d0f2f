package sandslurry.report.section;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantResult.Recycling;
import sandslurry.assessment.plant.PlantResult.Sized;
import sandslurry.assessment.plant.PlantResult.WaterSizing;
import sandslurry.plant.unit.Liquor;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** The loop of a plant in a report: what its liquor thickens to, and the water that helps. */
record PlantLoopSection(PlantResult result, Page page) implements SectionWriter {
  private static Column<Map.Entry<LiquorLimit, String>> liquor(
      String label, Kind<?> kind, ToDoubleFunction<LiquorLimit> si) {
    return Column.of(label, kind, one -> si.applyAsDouble(one.getKey()));
  }

  void write() {
    loop();
    sizing();
  }

  private void loop() {
    List<ModeResult> steady =
        result.modes().stream().filter(mode -> mode.liquor().isPresent()).toList();
    if (steady.isEmpty()) {
      return;
    }
    heading(2, "What the liquor thickens to");
    Map<LiquorLimit, String> alike = new LinkedHashMap<>();
    steady.forEach(
        mode ->
            alike.merge(
                mode.liquor().orElseThrow(), mode.mode().name(), (one, next) -> one + ", " + next));
    tableOf(
        List.copyOf(alike.entrySet()),
        List.of(
            Column.text("mode", Map.Entry::getValue),
            liquor("solids not captured S", Kind.MASS_PER_DAY, LiquorLimit::solidsNotCaughtKgps),
            liquor("net water W", Kind.MASS_PER_DAY, LiquorLimit::netWaterKgps),
            liquor("solids of the liquor S/(S+W)", Kind.PERCENT, LiquorLimit::solved),
            liquor("dissolved", Kind.PERCENT, LiquorLimit::dissolved),
            liquor("sand recovered", Kind.PERCENT, LiquorLimit::sandCapture)));
    paragraph(
        "S and W are what leaves with the liquor: their share is the balance itself. More recycle"
            + " means more passes through the separators, each at a higher flow rate; of what no"
            + " unit captures it changes nothing. A purge is the surplus itself and grows only with"
            + " the water."
            + (result.recycling().isEmpty() ? " Here nothing is recycled." : ""));
    if (!result.recycling().isEmpty()) {
      tableOf(
          result.recycling(),
          List.of(
              Column.of("recycle pumps at, of their flow rate", Kind.PERCENT, Recycling::factor),
              Column.text(
                  head("recycled", Kind.FLOW),
                  one -> one.liquor().map(l -> number(Kind.FLOW, one.recycledM3ps())).orElse("-")),
              Column.text(
                  "liquor settles at [%]",
                  one -> one.liquor().map(l -> number(Kind.PERCENT, l.solved())).orElse("-")),
              Column.text(
                  "sand recovered [%]",
                  one ->
                      one.liquor().map(l -> number(Kind.PERCENT, l.sandCapture())).orElse("-"))));
    }
    approach();
  }

  /** How soon the loop is there. */
  private void approach() {
    result
        .accounts()
        .flatMap(a -> a.liquor().timeConstantS().isPresent() ? Optional.of(a) : Optional.empty())
        .ifPresent(
            accounts -> {
              double tau = accounts.liquor().timeConstantS().getAsDouble();
              paragraph(
                  "A mixed loop goes 95 % of the way in "
                      + show(Kind.DAYS, Liquor.restsInS(tau))
                      + " (three times the volume of the pits over the inflow)."
                      + (result.settledDay().isPresent()
                          ? " By the schedule below, from pits full of water, it is there on day "
                              + result.settledDay().getAsInt()
                              + "."
                          : ""));
            });
  }

  /** Purge and fresh water, each on its own. */
  private void sizing() {
    WaterSizing sizing = result.sizing();
    if (!sizing.looked()) {
      return;
    }
    heading(2, "Purge and fresh water for the sand recovery wanted");
    table(
        List.of(
            "remedy",
            head("amount", Kind.FLOW),
            "sand recovered [%]",
            "liquor settles at [%]",
            head("to the storages", Kind.FLOW),
            head("without it", Kind.FLOW)),
        List.of(
            sized("fresh water added", sizing.added()),
            sized("recycled liquor replaced by fresh water", sizing.replaced())));
    paragraph(
        "Each is sized on its own, as the least that brings the recovery of the day to its target,"
            + " with no more water than can be had; a dash says that no amount does. Liquor that is"
            + " replaced leaves as a purge: the storages take in as much more.");
  }

  private List<String> sized(String what, Optional<Sized> sized) {
    return sized
        .map(
            s ->
                List.of(
                    what,
                    number(Kind.FLOW, s.amountM3ps()),
                    number(Kind.PERCENT, s.capture()),
                    number(Kind.PERCENT, s.liquor()),
                    number(Kind.FLOW, s.surplusM3ps()),
                    number(Kind.FLOW, s.surplusBeforeM3ps())))
        .orElse(List.of(what, "-", "-", "-", "-", "-"));
  }
}

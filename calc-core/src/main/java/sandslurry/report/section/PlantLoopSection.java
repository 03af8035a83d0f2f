package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantResult.Recycling;
import sandslurry.assessment.plant.PlantResult.Sized;
import sandslurry.assessment.plant.PlantResult.WaterSizing;
import sandslurry.plant.unit.Liquor;
import sandslurry.report.block.Block;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The loop of a plant in a report: what its liquor thickens to, and the water that helps. */
final class PlantLoopSection extends SectionWriter {
  private final PlantResult result;

  private PlantLoopSection(PlantResult result, UnitSystem units) {
    super(units);
    this.result = result;
  }

  static List<Block> of(PlantResult result, UnitSystem units) {
    PlantLoopSection section = new PlantLoopSection(result, units);
    section.loop();
    section.sizing();
    return section.blocks();
  }

  private void loop() {
    List<ModeResult> steady =
        result.modes().stream().filter(mode -> mode.liquor().isPresent()).toList();
    if (steady.isEmpty()) {
      return;
    }
    heading(2, "What the liquor thickens to");
    List<List<String>> rows = new ArrayList<>();
    for (ModeResult mode : steady) {
      LiquorLimit liquor = mode.liquor().orElseThrow();
      rows.add(
          List.of(
              mode.mode().name(),
              number(Kind.MASS_PER_DAY, liquor.solidsNotCaughtKgps()),
              number(Kind.MASS_PER_DAY, liquor.netWaterKgps()),
              number(Kind.PERCENT, liquor.analytic()),
              number(Kind.PERCENT, liquor.solved()),
              number(Kind.PERCENT, liquor.dissolved()),
              number(Kind.PERCENT, liquor.sandCapture())));
    }
    table(
        List.of(
            "mode",
            head("solids not captured S", Kind.MASS_PER_DAY),
            head("net water W", Kind.MASS_PER_DAY),
            "S/(S+W) [%]",
            "by the balance [%]",
            "dissolved [%]",
            "sand recovered [%]"),
        rows);
    paragraph(
        "Recycling more of a thick liquid dilutes nothing: the recycle ratio cancels. What helps is"
            + " to capture more solids or to bring more fresh water. A purge is the surplus itself"
            + " and grows only with the water. No unit captures salts; where they concentrate,"
            + " struvite can scale pipes and pumps.");
    if (!result.recycling().isEmpty()) {
      List<List<String>> factors = new ArrayList<>();
      for (Recycling one : result.recycling()) {
        factors.add(
            List.of(
                number(Kind.NUMBER, one.factor()),
                one.liquor().isPresent() ? number(Kind.FLOW, one.recycledM3ps()) : "-",
                one.liquor().map(l -> number(Kind.PERCENT, l.solved())).orElse("-"),
                one.liquor().map(l -> number(Kind.PERCENT, l.sandCapture())).orElse("-")));
      }
      table(
          List.of(
              "recycle pumps at",
              head("recycled", Kind.FLOW),
              "liquor settles at [%]",
              "sand recovered [%]"),
          factors);
      paragraph(
          "S / (S + W) holds whatever is recycled. It moves only as far as a separator captures"
              + " more or less on the second and third pass, or lets more sand settle in more or"
              + " less liquor.");
    }
    result
        .accounts()
        .flatMap(a -> a.timeConstantS().isPresent() ? Optional.of(a) : Optional.empty())
        .ifPresent(
            accounts -> {
              double tau = accounts.timeConstantS().getAsDouble();
              paragraph(
                  "A mixed loop goes 95 % of the way in "
                      + units.show(Kind.DAYS, InUnit.ofDays(Liquor.daysTo(tau, 0.95)))
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

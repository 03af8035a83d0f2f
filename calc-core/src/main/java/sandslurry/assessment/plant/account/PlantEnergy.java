package sandslurry.assessment.plant.account;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.PumpResult;
import sandslurry.design.plant.PlantSpec;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.EnergyUse;
import sandslurry.plant.unit.Conditions;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/**
 * The energy of a plant: machines given, feed pumps of cyclones, mixers, and the pumps of the line
 * when the design has one.
 *
 * @param uses what takes energy
 * @param notCounted pumps of pits that no machine of their name stands for: their head is not known
 * @param cows lactating cows
 * @param sandKgps sand flushed [kg/s]
 */
record PlantEnergy(List<EnergyUse> uses, List<String> notCounted, double cows, double sandKgps) {
  static PlantEnergy of(
      PlantModel model,
      List<ModeResult> modes,
      Stream flushed,
      Optional<ServiceResult.Day> lineDay,
      Optional<PumpResult> linePump) {
    PlantSpec spec = model.spec();
    List<EnergyUse> uses = new ArrayList<>(spec.machines());
    line(flushed, lineDay, linePump).ifPresent(uses::add);
    List<String> notCounted = new ArrayList<>();
    Conditions expected = model.expected();
    for (PlantUnit unit : spec.units()) {
      unit.energy(expected, ofFeed -> mean(modes, unit, ofFeed)).ifPresent(uses::add);
      for (String stream : unit.pumps().keySet()) {
        if (!named(spec, stream)) {
          notCounted.add("pump of \"" + stream + "\"");
        }
      }
    }
    return new PlantEnergy(
        List.copyOf(uses),
        List.copyOf(notCounted),
        spec.pens().stream().mapToDouble(pen -> pen.pen().cows()).sum(),
        flushed.sandKgps());
  }

  /** The pumps of the line: by their day, or by the time that they need for what is flushed. */
  private static Optional<EnergyUse> line(
      Stream flushed, Optional<ServiceResult.Day> lineDay, Optional<PumpResult> linePump) {
    if (lineDay.isPresent()) {
      return Optional.of(
          new EnergyUse(
              "pumps of the line, by their day",
              Range.of(lineDay.get().energyJ() / InUnit.ofDays(1)),
              1));
    }
    return linePump
        .flatMap(PumpResult::governing)
        .map(
            duty -> {
              double share = flushed.volumeM3ps() / Measure.FLOW.si(duty.flow());
              return new EnergyUse(
                  "pumps of the line, as long as the manure of the pens and the fresh water need",
                  Range.of(Measure.POWER.si(duty.inputPower())),
                  Math.min(1, share));
            });
  }

  /** The mean over the day of what follows from the feed of a unit. */
  private static double mean(
      List<ModeResult> modes, PlantUnit unit, ToDoubleFunction<Stream> ofFeed) {
    double sum = 0;
    for (ModeResult mode : modes) {
      sum += mode.share() * ofFeed.applyAsDouble(mode.balance().orElseThrow().feed(unit.name()));
    }
    return sum;
  }

  /** Whether a machine of known power stands for the pump of a stream. */
  private static boolean named(PlantSpec spec, String stream) {
    String name = stream.toLowerCase(Locale.ROOT);
    return spec.machines().stream()
        .anyMatch(machine -> machine.what().toLowerCase(Locale.ROOT).contains(name));
  }

  Range perDayJ() {
    return EnergyUse.totalPerDayJ(uses);
  }

  List<Figure> figures() {
    List<Figure> figures = new ArrayList<>();
    double day = InUnit.ofDays(1);
    uses.forEach(
        use ->
            figures.add(
                new Figure(
                    use.what() + ", mean of the day",
                    Kind.POWER,
                    use.perDayJ().map(joules -> joules / day))));
    figures.add(
        new Figure(
            "all of them, mean of the day", Kind.POWER, perDayJ().map(joules -> joules / day)));
    figures.add(new Figure("all of them in a day", Kind.ENERGY, perDayJ()));
    if (cows > 0) {
      figures.add(new Figure("a lactating cow and day", Kind.ENERGY, perDayJ().map(j -> j / cows)));
    }
    if (sandKgps > 0) {
      figures.add(
          new Figure(
              "by mass of sand flushed",
              Kind.SPECIFIC_ENERGY,
              perDayJ().map(joules -> joules / (sandKgps * day))));
    }
    return figures;
  }
}

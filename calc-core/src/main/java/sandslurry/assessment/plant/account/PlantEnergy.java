package sandslurry.assessment.plant.account;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import sandslurry.assessment.plant.PlantMeanDay;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.station.PumpResult;
import sandslurry.design.plant.PlantSpec;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.EnergyUse;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.unit.Conditions;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * The energy of a plant: machines given, feed pumps of cyclones, mixers, and the pumps of the lines
 * of the design.
 *
 * @param uses what takes energy
 * @param notCounted pumps of pits that no machine of their name stands for: their head is not known
 * @param cows lactating cows
 * @param sandKgps sand flushed [kg/s]
 */
record PlantEnergy(List<EnergyUse> uses, List<String> notCounted, double cows, double sandKgps) {
  static PlantEnergy of(
      PlantModel model, List<ModeResult> modes, PlantMeanDay day, List<LineDuty> lines) {
    PlantSpec spec = model.spec();
    Stream flushed = day.sand().flushed();
    List<EnergyUse> uses = new ArrayList<>(spec.machines());
    lines.forEach(line -> line(day, line).ifPresent(uses::add));
    Set<String> pumped = new HashSet<>();
    lines.stream().filter(LineDuty::isKnown).forEach(line -> line.stream().ifPresent(pumped::add));
    List<String> notCounted = new ArrayList<>();
    Conditions expected = model.expected();
    for (PlantUnit unit : spec.units()) {
      // What comes through a line is driven by the pumps of that line.
      if (unit.role() != PlantUnit.Role.SPINS
          || unit.inlets().stream().noneMatch(pumped::contains)) {
        unit.energy(expected, of -> mean(modes, of)).ifPresent(uses::add);
      }
      for (String stream : unit.pumps().keySet()) {
        if (!named(spec, stream) && !pumped.contains(stream)) {
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

  /** The pumps of a line: by their day, or by the time that they need for what it carries. */
  private static Optional<EnergyUse> line(PlantMeanDay day, LineDuty line) {
    if (line.day().isPresent()) {
      return Optional.of(
          new EnergyUse(
              "pumps of " + line.of() + ", by their day",
              Range.of(line.day().get().energyJ() / InUnit.DAY.si(1)),
              1));
    }
    Optional<String> stream = line.alone() ? Optional.empty() : line.stream();
    double volumeM3ps =
        stream
            .map(name -> day.streams().get(name).volumeM3ps())
            .orElse(day.sand().flushed().volumeM3ps());
    String needs =
        stream
            .map(name -> "\"" + name + "\" needs")
            .orElse("the manure of the pens and the fresh water need");
    return line.pump()
        .flatMap(PumpResult::governing)
        .map(
            duty ->
                new EnergyUse(
                    "pumps of " + line.of() + ", as long as " + needs,
                    Range.of(duty.inputW()),
                    Math.min(1, volumeM3ps / duty.flowM3ps())));
  }

  /** The mean over the day of what follows from its balances. */
  private static double mean(List<ModeResult> modes, ToDoubleFunction<SteadyBalance> of) {
    double sum = 0;
    for (ModeResult mode : modes) {
      sum += mode.share() * of.applyAsDouble(mode.balance().orElseThrow());
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
    double day = InUnit.DAY.si(1);
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

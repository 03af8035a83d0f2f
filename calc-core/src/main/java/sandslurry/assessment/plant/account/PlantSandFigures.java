package sandslurry.assessment.plant.account;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sandslurry.assessment.plant.PlantCirculation.State;
import sandslurry.assessment.plant.PlantMeanDay;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.Spread;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Constituents;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.SandAccount;
import sandslurry.units.Kind;

/** The figures of the sand of a plant: all of it new, circulating at rest, and as bedding. */
record PlantSandFigures(PlantModel model, Spread<PlantMeanDay> days) {
  List<Figure> ofNewSand() {
    List<Figure> figures = new ArrayList<>();
    figures.add(days.figure("bedded", Kind.MASS_PER_DAY, m -> m.sand().bedded().sandKgps()));
    if (model.spec().accounting().sandReachingPlant().low() < 1) {
      figures.add(
          days.figure(
              "stays in stalls and alleys, hauled with the bedding",
              Kind.MASS_PER_DAY,
              m -> m.sand().beforeThePlantKgps()));
    }
    figures.addAll(flows(days, PlantMeanDay::sand));
    figures.add(
        days.figure(
            "still in channel, line and pits",
            Kind.MASS_PER_DAY,
            m -> Math.max(0, rounded(m.sand()))));
    figures.addAll(recoveries(days, PlantMeanDay::sand));
    figures.add(
        days.figure(
            "sand bedded that need not be bought", Kind.PERCENT, m -> m.sand().notBought()));
    figures.add(
        days.figure(
            "recovery as it seems when the wet heap is weighed",
            Kind.PERCENT,
            m -> m.sand().recoveryAsWeighed()));
    figures.add(
        new Figure(
            "mean size", Kind.GRAIN, Range.of(meanSize(model.constituents().sandClasses()))));
    return figures;
  }

  static List<Figure> atRest(Spread<State> rest) {
    List<Figure> figures = new ArrayList<>();
    figures.addAll(flows(rest, State::account));
    figures.addAll(recoveries(rest, State::account));
    figures.add(
        rest.figure(
            "sand bedded that need not be bought", Kind.PERCENT, s -> s.rest().notBought()));
    figures.add(
        rest.figure(
            "mean size of the bedding",
            Kind.GRAIN,
            s -> meanSize(s.rest().bedded().sandClasses())));
    figures.add(
        rest.figure("mineral fines in the bedding", Kind.PERCENT, s -> fines(s.rest().bedded())));
    return figures;
  }

  Optional<List<Figure>> ofBedding() {
    if (!(days.base().recovered().sandKgps() > 0)) {
      return Optional.empty();
    }
    Spread<PlantMeanDay> some = days.where(m -> m.recovered().sandKgps() > 0);
    return Optional.of(
        List.of(
            some.figure("water by mass", Kind.PERCENT, m -> m.bed().moisture()),
            some.figure(
                "organic matter in the dry matter", Kind.PERCENT, m -> m.bed().organicMatter()),
            some.figure(
                "mineral fines in the mineral grains", Kind.PERCENT, m -> m.bed().mineralFines()),
            new Figure(
                "mineral fines in the sand bought",
                Kind.PERCENT,
                Range.of(model.constituents().mineralFinesShare())),
            some.figure("mean grain size", Kind.GRAIN, m -> m.bed().meanSizeM())));
  }

  private static <T> List<Figure> flows(Spread<T> cases, Function<T, SandAccount> account) {
    List<Figure> figures = new ArrayList<>();
    figures.add(
        cases.figure(
            "flushed to the plant",
            Kind.MASS_PER_DAY,
            one -> account.apply(one).flushed().sandKgps()));
    figures.add(
        cases.figure(
            "recovered", Kind.MASS_PER_DAY, one -> account.apply(one).recovered().sandKgps()));
    for (String where : account.apply(cases.base()).lost().keySet()) {
      figures.add(
          cases.figure(
              where.equals(Use.SETTLED.word())
                  ? "settled in channel, line and pits, and dug out"
                  : "lost with " + where,
              Kind.MASS_PER_DAY,
              one -> account.apply(one).lost().get(where).sandKgps()));
    }
    return figures;
  }

  private static <T> List<Figure> recoveries(Spread<T> cases, Function<T, SandAccount> account) {
    return List.of(
        cases.figure(
            "recovery of the sand flushed",
            Kind.PERCENT,
            one -> account.apply(one).recoveryOfFlushed()),
        cases.figure(
            "recovery of the sand bedded",
            Kind.PERCENT,
            one -> account.apply(one).recoveryOfBedded()));
  }

  /** Mineral grains, sand and fines. */
  static double grains(Stream stream) {
    return stream.sandKgps() + stream.kgps(Constituents.MINERAL_FINES);
  }

  private static double fines(Stream stream) {
    double all = grains(stream);
    return all > 0 ? stream.kgps(Constituents.MINERAL_FINES) / all : 0;
  }

  /** What neither leaves nor is recovered: 0 in a steady balance but for rounding. */
  private static double rounded(SandAccount account) {
    double left = account.stillInTheLineKgps();
    return Math.abs(left) <= 1e-5 * account.flushed().sandKgps() ? 0 : left;
  }

  private static double meanSize(List<SizeClass> classes) {
    double log = 0;
    for (SizeClass size : classes) {
      log += size.massFraction() * Math.log(size.meanM());
    }
    return Math.exp(log);
  }
}

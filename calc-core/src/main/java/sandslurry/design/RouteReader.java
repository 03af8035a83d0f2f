package sandslurry.design;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.units.Measure;

/** Reads the route of the line: its runs, their pipes and fittings. */
final class RouteReader {
  private static final Limits<Length> OUTLET_HEAD = Limits.of(Measure.LENGTH, "0 m", "50 m");
  private static final Limits<Length> ROUGHNESS = Limits.of(Measure.LENGTH, "0 mm", "5 mm");
  private static final Limits<Length> RUN_LENGTH = Limits.of(Measure.LENGTH, "0.1 m", "20 km");
  private static final Limits<Length> RISE = Limits.of(Measure.LENGTH, "-200 m", "200 m");

  /** The loss at the outlet is the velocity head, which the line always counts. */
  private static final Map<String, FittingKind> FITTINGS =
      DesignReader.named(
          Arrays.stream(FittingKind.values())
              .filter(kind -> kind != FittingKind.PIPE_EXIT)
              .toArray(FittingKind[]::new),
          FittingKind::id);

  private RouteReader() {}

  static Optional<RouteSpec> route(Section part) {
    Optional<Quantity<Length>> level = part.orDefault("sourceLevel", DesignReader.LEVEL, "0 m");
    Optional<Quantity<Length>> outlet = part.orDefault("outletHead", OUTLET_HEAD, "0 m");
    List<Section> entries = part.list("runs");
    if (entries.isEmpty()) {
      part.problem("runs", "a route needs one pipe run or more");
    }
    List<RouteSpec.RunSpec> runs = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      run(entries.get(i), "run " + (i + 1)).ifPresent(runs::add);
    }
    part.refuseUnknown();
    Set<String> names = new HashSet<>();
    for (int i = 0; i < runs.size() && runs.size() == entries.size(); i++) {
      if (!names.add(runs.get(i).name())) {
        entries.get(i).problem("name", "is the name of another run too: give each its own");
      }
    }
    return level.isPresent() && outlet.isPresent() && runs.size() == entries.size()
        ? Optional.of(new RouteSpec(level.get(), outlet.get(), runs))
        : Optional.empty();
  }

  static Optional<RouteSpec.RunSpec> run(Section part, String defaultName) {
    String name = part.text("name").orElse(defaultName);
    Optional<Quantity<Length>> length = part.required("length", RUN_LENGTH);
    Optional<Quantity<Length>> rise = part.orDefault("rise", RISE, "0 m");
    Map<FittingKind, Integer> fittings = fittings(part);
    part.exactlyOne("pipe", "bore");
    Optional<StandardPipe> pipe = part.part("pipe").flatMap(RouteReader::pipe);
    Optional<Quantity<Length>> bore = part.optional("bore", DesignReader.BORE);
    Optional<Quantity<Pressure>> rating = part.optional("rating", DesignReader.RATING);
    Optional<Quantity<Length>> roughness = part.optional("roughness", ROUGHNESS);
    if (part.has("bore") && !part.has("roughness")) {
      part.problem("roughness", "is missing: a run given by its bore needs a roughness");
    }
    if (part.has("pipe") && part.has("rating")) {
      part.problem("rating", "belongs to a run given by its bore: a standard pipe has its own");
    }
    part.refuseUnknown();
    if (length.isEmpty() || rise.isEmpty() || pipe.isEmpty() && bore.isEmpty()) {
      return Optional.empty();
    }
    if (Math.abs(Measure.LENGTH.si(rise.get())) > Measure.LENGTH.si(length.get())) {
      part.problem(
          "rise", "cannot exceed the length of the run, " + Measure.LENGTH.write(length.get()));
      return Optional.empty();
    }
    if (pipe.isEmpty() && roughness.isEmpty()) {
      return Optional.empty();
    }
    if (pipe.isEmpty()
        && Measure.LENGTH.si(roughness.get()) > 0.1 * Measure.LENGTH.si(bore.get())) {
      part.problem(
          "roughness", "cannot exceed a tenth of the bore, " + Measure.LENGTH.write(bore.get()));
      return Optional.empty();
    }
    return Optional.of(
        new RouteSpec.RunSpec(
            name,
            pipe,
            pipe.map(StandardPipe::largestBoreM).map(Measure.LENGTH::of).or(() -> bore).get(),
            pipe.map(StandardPipe::meanBoreM).map(Measure.LENGTH::of).or(() -> bore).get(),
            pipe.isPresent() ? Optional.empty() : rating,
            roughness.orElseGet(
                () -> Measure.LENGTH.of(pipe.get().system().material().newRoughnessM())),
            length.get(),
            rise.get(),
            fittings));
  }

  private static Optional<StandardPipe> pipe(Section part) {
    Map<String, String> systems =
        DesignReader.named(PipeCatalogue.systems().toArray(String[]::new), system -> system);
    Optional<String> system = part.requiredChoice("system", systems);
    Optional<String> size = part.text("size");
    Optional<String> pipeClass = part.text("class");
    if (!part.has("size")) {
      part.problem("size", "is missing: the nominal size of the pipe");
    }
    if (!part.has("class")) {
      part.problem("class", "is missing: the schedule, SDR or DR of the pipe");
    }
    part.refuseUnknown();
    if (!Section.there(system, size, pipeClass)) {
      return Optional.empty();
    }
    Optional<StandardPipe> pipe = PipeCatalogue.find(system.get(), size.get(), pipeClass.get());
    if (pipe.isEmpty()) {
      part.problem(
          "size",
          "with class \""
              + pipeClass.get()
              + "\" is not in "
              + system.get()
              + "; sizes: "
              + String.join(", ", PipeCatalogue.sizes(system.get()))
              + "; classes: "
              + String.join(", ", PipeCatalogue.classes(system.get())));
    }
    return pipe;
  }

  private static Map<FittingKind, Integer> fittings(Section part) {
    Map<FittingKind, Integer> fittings = new EnumMap<>(FittingKind.class);
    for (Section entry : part.list("fittings")) {
      Optional<FittingKind> kind = entry.requiredChoice("kind", FITTINGS);
      Optional<Integer> count = entry.has("count") ? entry.count("count", 1, 1000) : Optional.of(1);
      entry.refuseUnknown();
      if (kind.isPresent() && count.isPresent()) {
        fittings.merge(kind.get(), count.get(), Integer::sum);
      }
    }
    return fittings;
  }
}

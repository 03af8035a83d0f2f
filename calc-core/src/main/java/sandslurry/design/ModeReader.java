package sandslurry.design;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sandslurry.design.PlantSpec.ModeSpec;
import sandslurry.units.InUnit;

/** Reads the modes in which a plant runs in the course of a day. */
final class ModeReader {
  private ModeReader() {}

  static Optional<ModeSpec> mode(Section part) {
    Optional<String> name = part.name("name", "what the mode is called");
    Optional<Double> from = part.si("from", PlantLimits.CLOCK);
    Optional<Double> to = part.si("to", PlantLimits.CLOCK);
    Map<String, Double> flows = new LinkedHashMap<>();
    List<Section> entries = part.list("flows");
    for (Section entry : entries) {
      Optional<String> stream = entry.name("stream", "a pump or fresh water");
      Optional<Double> flow = entry.si("flow", PlantLimits.WATER);
      entry.refuseUnknown();
      if (Section.there(stream, flow)) {
        flows.put(stream.get(), flow.get());
      }
    }
    part.refuseUnknown();
    return Section.there(name, from, to)
        ? Optional.of(new ModeSpec(name.get(), from.get(), to.get(), flows))
        : Optional.empty();
  }

  /** Whether modes cover the day once, and set what can be set. */
  static void check(
      List<Section> parts, List<ModeSpec> modes, Set<String> settable, Section plant) {
    Map<String, Integer> names = new HashMap<>();
    for (int i = 0; i < modes.size(); i++) {
      ModeSpec mode = modes.get(i);
      Section part = parts.get(i);
      if (names.put(mode.name(), i) != null) {
        part.problem("name", "is the name of another mode too");
      }
      if (!(mode.fromS() < mode.toS())) {
        part.problem("to", "must be after \"from\"; a mode over midnight is given as two");
      }
      mode.flowsM3ps()
          .keySet()
          .forEach(
              stream -> {
                if (!settable.contains(stream)) {
                  part.problem(
                      "flows",
                      "\""
                          + stream
                          + "\" is neither fresh water nor pumped from a pit; those are: "
                          + settable.stream().sorted().collect(Collectors.joining(", ")));
                }
              });
    }
    List<ModeSpec> sorted =
        modes.stream().sorted(Comparator.comparingDouble(ModeSpec::fromS)).toList();
    double reached = 0;
    for (ModeSpec mode : sorted) {
      if (Math.abs(mode.fromS() - reached) > 1) {
        plant.problem("modes", "leave a gap or overlap before \"" + mode.name() + "\" starts");
      }
      reached = mode.toS();
    }
    if (!modes.isEmpty() && Math.abs(reached - InUnit.ofDays(1)) > 1) {
      plant.problem("modes", "must cover the day from 0 h to 24 h");
    }
  }
}

package sandslurry.design;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import sandslurry.design.PlantSpec.PenSpec;
import sandslurry.design.PlantSpec.Product;
import sandslurry.design.PlantSpec.WaterSpec;
import sandslurry.design.UnitSpec.PitSpec;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Network;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.Unit;

/** The units of a plant while it is read, and the streams that connect them. */
final class PlantConnections {
  private final List<UnitSpec> units = new ArrayList<>();
  private final List<String> dugOut = new ArrayList<>();
  private final List<Section> unitParts = new ArrayList<>();
  private final List<Ports> ports = new ArrayList<>();

  /** The names of the streams of a unit, known even where its other fields are wrong. */
  private record Ports(String name, List<String> inlets, List<String> outlets) implements Unit {
    @Override
    public Split split(Stream feed) {
      throw new IllegalStateException(name + " is only a name");
    }
  }

  List<UnitSpec> units() {
    return units;
  }

  void add(UnitSpec unit) {
    units.add(unit);
  }

  /** What is dug out of a pit leaves the plant without being a product. */
  void digOut(String stream) {
    dugOut.add(stream);
  }

  void connect(Section part, String name, List<String> in, List<String> out) {
    unitParts.add(part);
    ports.add(new Ports(name, in, out));
  }

  /** The streams whose flow can be set: fresh water, and what is pumped from pits. */
  Set<String> settable(List<WaterSpec> waters) {
    Set<String> settable = new HashSet<>();
    waters.forEach(water -> settable.add(water.stream()));
    for (UnitSpec unit : units) {
      if (unit instanceof PitSpec pit) {
        settable.addAll(pit.pit().draws().keySet());
      }
    }
    return settable;
  }

  /** What is wrong with the names of streams, told at the unit that has the name. */
  void check(Section part, List<PenSpec> pens, List<WaterSpec> waters, List<Product> products) {
    Set<String> feeds = new LinkedHashSet<>();
    Set<String> twice = new HashSet<>();
    pens.forEach(pen -> twice.addAll(feeds.add(pen.stream()) ? Set.of() : Set.of(pen.stream())));
    waters.forEach(w -> twice.addAll(feeds.add(w.stream()) ? Set.of() : Set.of(w.stream())));
    twice.forEach(
        name -> part.problem("pens", "the stream \"" + name + "\" is fed by more than one"));
    Set<String> leaving = new LinkedHashSet<>();
    products.forEach(product -> leaving.add(product.stream()));
    leaving.addAll(dugOut);
    for (String problem : Network.problems(ports, feeds, leaving)) {
      // A blank name has been told where it stands.
      if (problem.contains("has no name") || problem.contains("\"\"")) {
        continue;
      }
      int at = culprit(problem);
      if (at >= 0) {
        unitParts.get(at).problem("name", problem);
      } else {
        part.problem("units", problem);
      }
    }
  }

  private int culprit(String problem) {
    for (int i = 0; i < ports.size(); i++) {
      if (!ports.get(i).name().isEmpty() && problem.contains("\"" + ports.get(i).name() + "\"")) {
        return i;
      }
    }
    return -1;
  }
}

package sandslurry.plant.unit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.Unit;

/**
 * A tee, weir or mixing point.
 *
 * @param splitter the splitter
 * @param kind "splitter", or "flush" where manure and flush water meet
 */
public record SplitterUnit(Splitter splitter, String kind) implements PlantUnit {
  @Override
  public String name() {
    return splitter.name();
  }

  @Override
  public List<String> inlets() {
    return splitter.inlets();
  }

  @Override
  public List<String> outlets() {
    return splitter.outlets();
  }

  @Override
  public List<String> byGravity() {
    return outlets();
  }

  @Override
  public Role role() {
    return Role.DIVIDES;
  }

  @Override
  public Unit built(Conditions c) {
    return splitter;
  }

  @Override
  public UnitResult at(Conditions c, SteadyBalance balance) {
    return UnitResult.NONE;
  }

  @Override
  public Map<String, Part> parts() {
    return Map.of();
  }

  @Override
  public Optional<Care> care(Care.Numbers shown) {
    return Optional.empty();
  }

  /** A tee, weir or mixing point. */
  static final class SplitterFields extends UnitFields.HeldFields {
    private static final OutletFields OUTLET = new OutletFields();

    private final Field<List<Map.Entry<String, Double>>> outlets =
        list("outlets", OUTLET, "a splitter needs one outlet or more")
            .label("Streams out and their shares, in all 100 %")
            .means("the streams out and their shares, which sum to 1");

    SplitterFields() {
      super("splitter", "splitter");
      begins("{\"outlets\": [{}, {}]}");
    }

    @Override
    public List<Ports> ports(Values values) {
      return one(
          values,
          values.inside(outlets).stream().map(outlet -> out(outlet, OUTLET.stream)).toList());
    }

    @Override
    protected Optional<List<PlantUnit>> make(Values values) {
      List<Map.Entry<String, Double>> all = values.get(outlets);
      return values.made(
          outlets,
          () ->
              List.of(
                  new SplitterUnit(
                      new Splitter(
                          values.get(name),
                          values.get(in),
                          all.stream().map(Map.Entry::getKey).toList(),
                          all.stream().map(Map.Entry::getValue).toList()),
                      "splitter")));
    }
  }

  /** An outlet of a splitter. */
  private static final class OutletFields extends Fields<Map.Entry<String, Double>> {
    private final Field<String> stream =
        needed("stream", Type.name("the stream out"))
            .label("Stream")
            .means("name of the stream out")
            .such("bleed");
    private final Field<Double> share =
        needed("share", CommonLimits.SHARE).label("Share").means("share of the feed").such("90 %");

    OutletFields() {
      super("outlet", "outlet");
    }

    @Override
    protected Optional<Map.Entry<String, Double>> make(Values values) {
      return Optional.of(Map.entry(values.get(stream), values.get(share)));
    }
  }
}

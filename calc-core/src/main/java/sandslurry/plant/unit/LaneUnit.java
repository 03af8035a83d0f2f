package sandslurry.plant.unit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.separation.Partition;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.separation.lane.LaneDeposit;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/**
 * A settling lane, or several in turn.
 *
 * @param place where it stands in the plant
 * @param reaches its reaches from the inlet on
 * @param filled how full of sand it is judged, as a share of the depth for sand; left out, what it
 *     keeps is meant from clean to clean-out
 * @param lanes how many there are in turn
 * @param drainS time to drain before it is dug [s]
 * @param digS time to dig it out [s]
 * @param drainPathM longest way of the water in the sand to a drain [m]
 * @param stackS time that the sand lies in a stack [s]
 * @param stackHeightM height of the stack [m]
 */
public record LaneUnit(
    Place place,
    List<LaneReach> reaches,
    OptionalDouble filled,
    int lanes,
    double drainS,
    double digS,
    double drainPathM,
    double stackS,
    double stackHeightM)
    implements Separator {
  /** Copies the list. */
  public LaneUnit {
    reaches = List.copyOf(reaches);
  }

  @Override
  public String kind() {
    return "lane";
  }

  /**
   * Thickness of the deposit at which it is judged.
   *
   * @return one for each reach, half the depth for sand when none is given [m]
   */
  public List<Double> depositsM() {
    return reaches.stream().map(reach -> filled.orElse(0.5) * reach.storageDepthM()).toList();
  }

  @Override
  public Role role() {
    return Role.SETTLES;
  }

  @Override
  public Optional<Divided> divide(Conditions c, Stream stream, double share) {
    List<LaneReach> here = reaches(c);
    return feed(c, here, stream, share).map(feed -> divided(kept(c, here, feed)));
  }

  /** What stays in the lane: when it is filled as given, or from clean to clean-out. */
  private Partition kept(Conditions c, List<LaneReach> here, UnitFeed feed) {
    return filled.isEmpty()
        ? LaneFilling.mean(
            here, feed, c.organic(feed), c.porosity(), c.outlook(), LaneFilling.LEAST_KEPT)
        : LaneDeposit.of(here, depositsM(), feed, c.organic(feed), c.porosity(), c.outlook())
            .partition();
  }

  /** What enters while it runs, with the viscosity at the shear rate 3 V/h of the first reach. */
  private Optional<UnitFeed> feed(Conditions c, List<LaneReach> here, Stream stream, double share) {
    double flow = stream.volumeM3ps() / share;
    if (!(flow > 0)) {
      return Optional.empty();
    }
    ChannelFlow channel = here.get(0).flow(flow, depositsM().get(0));
    return c.settling(stream, share, 3 * channel.velocityMps() / channel.depthM());
  }

  private List<LaneReach> reaches(Conditions c) {
    return reaches.stream()
        .map(
            reach ->
                new LaneReach(
                    new OpenChannel(
                        reach.channel().widthM() * c.areaFactor(),
                        reach.channel().slope(),
                        reach.channel().manningN()),
                    reach.lengthM(),
                    reach.waterLevelM(),
                    reach.storageDepthM(),
                    reach.effectiveShare()))
        .toList();
  }

  @Override
  public UnitResult at(Conditions c, SteadyBalance balance) {
    Stream stream = balance.feed(name());
    double share = seen(balance);
    return feed(c, reaches, stream, share)
        .<UnitResult>map(feed -> LaneUnitResult.of(this, c, stream, feed, share))
        .orElse(UnitResult.NONE);
  }

  @Override
  public Map<String, Part> parts() {
    return Map.of(name(), lanes > 1 ? Part.LANE_OF_SEVERAL : Part.SEPARATOR);
  }

  @Override
  public OptionalDouble staysS(Stream feed, double share) {
    double flow = feed.volumeM3ps() / share;
    return flow > 0
        ? OptionalDouble.of(
            reaches.stream()
                .mapToDouble(reach -> reach.lengthM() / reach.flow(flow, 0).velocityMps())
                .sum())
        : OptionalDouble.empty();
  }

  @Override
  public Optional<Care> care(Care.Numbers shown) {
    return Optional.of(
        new Care(
            "the flow covers the full width; a float takes the velocity"
                + shown.figure("velocity, clean", " from ")
                + " clean"
                + shown.figure("velocity at the end", " to ")
                + " just before cleaning.",
            "look at weir boards, drains and the level of the floor; have the sand of the stack"
                + " tested for organic matter and moisture.",
            "the flow cuts a channel through the sand of a filling lane (rake it level); it runs"
                + " faster than that; sand goes over the weir; dark layers show that it runs too"
                + " slow.",
            "when the sand is "
                + shown.show(Kind.DEPTH, reaches.get(0).storageDepthM())
                + " deep at the inlet"
                + shown.figure("clean-out interval", ", about every ")
                + "; drain it for "
                + shown.show(Kind.DAYS, drainS)
                + ", dig within "
                + shown.show(Kind.DAYS, digS)
                + ", leave the sand in the stack for "
                + shown.show(Kind.DAYS, stackS)
                + "."));
  }

  /** A settling lane, or several in turn. */
  static final class LaneUnitFields extends UnitFields.HeldFields {
    private final Field<String> sand =
        stream("sand", "Sand stream", "the stream of sand dug out", "sand");
    private final Field<String> over =
        stream("overflow", "Overflow stream", "the stream that leaves at the end", "lane overflow");
    private final Field<List<LaneReach>> reaches =
        list("reaches", new ReachFields(), "a lane needs one reach or more")
            .label("Reaches from the inlet on")
            .means("reaches from the inlet on, which may differ in width");
    private final Field<Optional<Double>> filled =
        optional("filled", CommonLimits.MOST_SHARE, "clean to clean-out")
            .label("Judged when filled to")
            .means(
                "how full of sand the balance takes it to be; without it the capture is the average"
                    + " over one cleaning cycle")
            .such("50 %");
    private final Field<Integer> lanes =
        standard("lanes", Type.count(20), "1")
            .label("Lanes in turn")
            .means("how many lanes there are in turn")
            .such("2");
    private final Field<Double> drain =
        standard("drainTime", CommonLimits.WAIT, "3 d")
            .label("Time to drain")
            .means("time to drain before it is dug")
            .such("3 d");
    private final Field<Optional<Double>> path =
        optional("drainPath", CommonLimits.SIDE, "default: all reaches")
            .label("Longest drain path")
            .means("longest way of the water in the sand to a drain")
            .such("3 m", "10 ft");
    private final Field<Double> dig =
        standard("digTime", CommonLimits.WAIT, "0.5 d")
            .label("Time to dig out")
            .means("time to dig it out")
            .such("0.5 d");
    private final Field<Double> stack =
        standard("stackTime", CommonLimits.WAIT, "14 d")
            .label("Time in the stack")
            .means("time that the sand lies in a stack")
            .such("28 d");
    private final Field<Double> height =
        standard("stackHeight", Type.quantity(Measure.LENGTH, "0.3 m", "10 m"), "1.5 m")
            .label("Height of the stack")
            .means("height of the stack")
            .such("1.5 m", "5 ft");
    private final Field<Double> running = running();

    LaneUnitFields() {
      super("lane", "settling lane");
      begins("{\"reaches\": [{}]}");
    }

    @Override
    public List<Ports> ports(Values values) {
      return one(values, List.of(out(values, sand), out(values, over)));
    }

    @Override
    protected Optional<List<PlantUnit>> make(Values values) {
      List<LaneReach> along = values.get(reaches);
      return Optional.of(
          List.of(
              new LaneUnit(
                  place(values, sand, over, running),
                  along,
                  values.number(filled),
                  values.get(lanes),
                  values.get(drain),
                  values.get(dig),
                  values
                      .get(path)
                      .orElseGet(() -> along.stream().mapToDouble(LaneReach::lengthM).sum()),
                  values.get(stack),
                  values.get(height))));
    }
  }

  /** A reach of a lane. */
  private static final class ReachFields extends Fields<LaneReach> {
    private final Field<Double> length =
        needed("length", CommonLimits.SIDE)
            .label("Length")
            .means("length of the reach")
            .such("30 m", "100 ft");
    private final Field<Double> width =
        needed("width", CommonLimits.SIDE)
            .label("Width")
            .means("width of the reach")
            .such("2 m", "6 ft");
    private final Field<Double> slope =
        standard("slope", CommonLimits.SLOPE, "0 %")
            .label("Slope")
            .means("fall over length")
            .such("0.2 %");
    private final Field<Double> manning =
        standard("manning", CommonLimits.MANNING, "0.015")
            .label("Manning's n")
            .means("Manning's roughness n of the channel")
            .such("0.015");
    private final Field<Optional<Double>> level =
        optional("waterLevel", CommonLimits.DEPTH, "default: normal depth")
            .label("Weir level over floor")
            .means(
                "level above the floor that a weir holds; without one the flow is uniform, which"
                    + " needs a slope")
            .such("200 mm", "8 in");
    private final Field<Double> storage =
        needed("sandStorageDepth", CommonLimits.DEPTH)
            .label("Depth kept for sand")
            .means("depth of sand before the lane is cleaned")
            .such("300 mm", "12 in");
    private final Field<Double> effective =
        standard("effectiveShare", CommonLimits.POSITIVE_SHARE, "100 %")
            .label("Effective floor")
            .means("share of the floor that works")
            .such("80 %");

    ReachFields() {
      super("reach", "reach");
    }

    @Override
    protected Optional<LaneReach> make(Values values) {
      return values.made(
          level,
          () ->
              new LaneReach(
                  new OpenChannel(values.get(width), values.get(slope), values.get(manning)),
                  values.get(length),
                  values.number(level),
                  values.get(storage),
                  values.get(effective)));
    }
  }
}

package sandslurry.pipe.fittings;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.units.Kind;

/**
 * The fittings of a slurry line, each with the three constants of its loss coefficient.
 *
 * <p>Constants of elbows, tees and valves are Darby's, valves fully open; those of entrances, exit
 * and union do not change with size. {@link FittingLoss} turns them into a loss coefficient.
 */
public enum FittingKind {
  /** 90° elbow, threaded, bend radius equal to the bore. */
  STANDARD_ELBOW_90("standard elbow 90", 800, 0.14, 4.0, Source.DARBY),
  /** 90° elbow, flanged or welded, bend radius equal to the bore. */
  SHORT_RADIUS_ELBOW_90("short radius elbow 90", 800, 0.091, 4.0, Source.DARBY),
  /** 90° elbow, bend radius 1.5 times the bore. */
  LONG_RADIUS_ELBOW_90("long radius elbow 90", 800, 0.071, 4.2, Source.DARBY),
  /** 90° bend, bend radius four times the bore. */
  SWEEP_ELBOW_90("sweep elbow 90", 800, 0.066, 3.9, Source.DARBY),
  /** 90° corner cut from straight pipe, one weld. */
  MITRED_ELBOW_90_ONE_WELD("mitred elbow 90 one weld", 1000, 0.27, 4.0, Source.DARBY),
  /** 90° corner cut from straight pipe, two welds. */
  MITRED_ELBOW_90_TWO_WELDS("mitred elbow 90 two welds", 800, 0.068, 4.1, Source.DARBY),
  /** 90° corner cut from straight pipe, three welds. */
  MITRED_ELBOW_90_THREE_WELDS("mitred elbow 90 three welds", 800, 0.035, 4.2, Source.DARBY),
  /** 45° elbow, threaded, bend radius equal to the bore. */
  STANDARD_ELBOW_45("standard elbow 45", 500, 0.071, 4.2, Source.DARBY),
  /** 45° elbow, bend radius 1.5 times the bore. */
  LONG_RADIUS_ELBOW_45("long radius elbow 45", 500, 0.052, 4.0, Source.DARBY),
  /** 45° corner cut from straight pipe, one weld. */
  MITRED_ELBOW_45("mitred elbow 45 one weld", 500, 0.086, 4.0, Source.DARBY),
  /** Tee, flanged or welded, flow straight through. */
  TEE_RUN("tee run", 150, 0.05, 4.0, Source.DARBY),
  /** Tee, flanged or welded, flow into or out of the branch. */
  TEE_BRANCH("tee branch", 800, 0.28, 4.0, Source.DARBY),
  /** Gate valve, full bore, open. */
  GATE_VALVE("gate valve", 300, 0.037, 3.9, Source.DARBY),
  /** Knife gate valve, full bore, open: taken as a gate valve. */
  KNIFE_GATE_VALVE("knife gate valve", 300, 0.037, 3.9, Source.KNIFE_GATE),
  /** Ball valve, full bore, open. */
  BALL_VALVE("ball valve", 300, 0.017, 3.5, Source.DARBY),
  /** Plug valve, flow straight through, open. */
  PLUG_VALVE("plug valve", 300, 0.084, 3.9, Source.DARBY),
  /** Swing check valve, flap fully lifted by the flow. */
  SWING_CHECK_VALVE("swing check valve", 1500, 0.46, 4.0, Source.DARBY),
  /** Pipe that begins flush with a wall, with a sharp edge. */
  SHARP_ENTRANCE("sharp entrance", 160, 0.5, 0, Source.ENTRANCE),
  /** Pipe that begins flush with a wall, edge rounded by 0.15 of the bore or more. */
  ROUNDED_ENTRANCE("rounded entrance", 160, 0.04, 0, Source.ENTRANCE),
  /** Pipe that sticks out into the tank. */
  PROJECTING_ENTRANCE("projecting entrance", 160, 0.78, 0, Source.ENTRANCE),
  /** Pipe that ends in a tank or in the open: the velocity head is lost. */
  PIPE_EXIT("pipe exit", 0, 1, 0, Source.EXIT),
  /** Threaded union or coupling. */
  UNION("union or coupling", 0, 0.08, 0, Source.UNION);

  private final String id;
  private final double laminar;
  private final double turbulent;
  private final double size;
  private final Citation citation;

  FittingKind(String id, double laminar, double turbulent, double size, Citation citation) {
    this.id = id;
    this.laminar = laminar;
    this.turbulent = turbulent;
    this.size = size;
    this.citation = citation;
  }

  /**
   * The words for it, in design files and for people; they do not change.
   *
   * @return for example "long radius elbow 90"
   */
  public String id() {
    return id;
  }

  /**
   * Where its constants come from.
   *
   * @return the source
   */
  Citation citation() {
    return citation;
  }

  /**
   * The equation of its loss coefficient with its constants.
   *
   * @return the equation as plain text
   */
  public Equation equation() {
    return citation.equation(
        "K",
        "loss coefficient of one " + id,
        laminar + "/Re + " + turbulent + " (1 + " + size + "/D[in]^0.3)",
        Kind.NUMBER,
        "Re, D m");
  }

  double laminarConstant() {
    return laminar;
  }

  double turbulentConstant() {
    return turbulent;
  }

  double sizeConstant() {
    return size;
  }

  private static final class Source {
    static final Citation DARBY =
        new Citation(
            "Darby",
            2001,
            "Chemical Engineering Fluid Mechanics, 2nd edition, Marcel Dekker; Silverberg and"
                + " Darby, Chemical Engineering 106(7), July 1999:101; constants as tabulated in"
                + " the general-purpose library CalebBell/fluids");
    static final Citation KNIFE_GATE =
        new Citation(
            "Darby",
            2001,
            "constants of the gate valve; that an open knife gate is taken as a gate valve is"
                + " common practice, no source");
    static final Citation ENTRANCE =
        new Citation(
            "Crane",
            2009,
            "Flow of Fluids through Valves, Fittings and Pipe, Technical Paper 410, as given by"
                + " the general-purpose library CalebBell/fluids; laminar constant 160: Hooper,"
                + " 1981, Chemical Engineering, 24 August:96-100, from memory, unverified");
    static final Citation EXIT =
        new Citation(
            "Crane",
            2009,
            "Flow of Fluids through Valves, Fittings and Pipe, Technical Paper 410, as given by"
                + " the general-purpose library CalebBell/fluids");
    static final Citation UNION =
        new Citation(
            "Cengel and Cimbala",
            2006,
            "Fluid Mechanics, table of loss coefficients, threaded union; from memory,"
                + " unverified");
  }
}

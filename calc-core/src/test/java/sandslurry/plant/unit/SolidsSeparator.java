package sandslurry.plant.unit;

import java.util.ArrayList;
import java.util.List;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.Unit;
import sandslurry.plant.network.UnitNote;

/**
 * Any unit that takes wet solids out of a stream: settling lane, box with its screw, hydrocyclone,
 * screen, press.
 *
 * <p>What the law catches leaves with the solids. So much liquor goes with it that the dry matter
 * of the solids is what is given. Liquor is water, dissolved solids and the fines not caught, in
 * the proportion of the feed. With C the dry matter caught, D the dry matter of all liquor, W its
 * water and x the dry matter of the solids as a mass fraction, the share s of the liquor that
 * leaves with the solids follows from
 *
 * <pre>
 * (C + s D) / (C + s (D + W)) = x      s = C (1 − x) / (x (D + W) − D)
 * </pre>
 *
 * <p>It has no solution in 0 to 1 when the liquor is itself as thick as the solids ought to be, or
 * when there is too little of it; then all liquor leaves with the solids, and a note says so.
 *
 * @param name what it is called
 * @param inlets names of the streams in
 * @param solids name of the stream of wet solids out
 * @param liquid name of the stream of liquid out
 * @param capture what is caught
 * @param solidsDryMatter dry matter over total mass of the wet solids, sand included, 0 (excluded)
 *     to 1
 */
public record SolidsSeparator(
    String name,
    List<String> inlets,
    String solids,
    String liquid,
    CaptureLaw capture,
    double solidsDryMatter)
    implements Unit {
  /** Copies the list and checks the dry matter. */
  public SolidsSeparator {
    inlets = List.copyOf(inlets);
    if (!(solidsDryMatter > 0 && solidsDryMatter <= 1)) {
      throw new IllegalArgumentException(
          name + ": dry matter of the solids lies in 0 (excluded) to 1 but was " + solidsDryMatter);
    }
  }

  @Override
  public List<String> outlets() {
    return List.of(solids, liquid);
  }

  @Override
  public Split split(Stream feed) {
    CaptureLaw.Captured captured = capture.of(feed);
    int count = feed.constituents().count();
    if (captured.sand().size() != feed.constituents().sandClasses().size()) {
      throw new IllegalArgumentException(
          name
              + ": needs a share for each of "
              + feed.constituents().sandClasses().size()
              + " classes of sand but has "
              + captured.sand().size());
    }
    double dryCaught = 0;
    double dryOfLiquor = 0;
    for (int i = 1; i < count; i++) {
      dryCaught += feed.kgps(i) * captured.share(i);
      dryOfLiquor += inLiquor(i) ? feed.kgps(i) * (1 - captured.share(i)) : 0;
    }
    double room = solidsDryMatter * (dryOfLiquor + feed.waterKgps()) - dryOfLiquor;
    double wanted = dryCaught * (1 - solidsDryMatter);
    List<UnitNote> notes = new ArrayList<>(captured.notes());
    double share = 0;
    if (wanted > 0) {
      share = wanted / room;
      if (!(room > 0 && share <= 1)) {
        share = 1;
        notes.add(
            new UnitNote(name, UnitNote.Reason.LIQUOR_SHORT, solidsDryMatter, solidsDryMatter));
      }
    }
    double[] first = new double[count];
    for (int i = 0; i < count; i++) {
      double caught = captured.share(i);
      first[i] = inLiquor(i) ? caught + (1 - caught) * share : caught;
    }
    return Split.two(first, notes);
  }

  private static boolean inLiquor(int constituent) {
    return constituent < Constituents.SAND && constituent != Constituents.FIBRE;
  }
}

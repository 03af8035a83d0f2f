package sandslurry.plant.network;

import sandslurry.plant.Stream;

/** What settles in a pit and stays there until it is dug out, or in a storage. */
public interface PitFloor {
  /**
   * The stream of what settles.
   *
   * @return its name
   */
  String stream();

  /**
   * What settles of the feed of a pit at rest.
   *
   * @param feed all that flows in
   * @return share of each constituent that settles, 0 to 1
   */
  double[] kept(Stream feed);

  /**
   * What settles in a time.
   *
   * @param contents what the pit holds; flows are masses [kg]
   * @param arrived the part of it that came in the step before; flows are masses [kg]
   * @param stepS the time [s]
   * @return what settles, no more than the contents; flows are masses [kg]
   */
  Stream settled(Stream contents, Stream arrived, double stepS);
}

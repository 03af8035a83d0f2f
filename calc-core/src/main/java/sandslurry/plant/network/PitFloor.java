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
   * What settles, at rest or in a step of time.
   *
   * @param through all that passes: what flows in and, in a step, what the pit held at its start
   *     over the length of the step
   * @param arriving the part of it that flows in; all of it at rest
   * @return share of each constituent of what passes that settles, 0 to 1
   */
  double[] kept(Stream through, Stream arriving);
}

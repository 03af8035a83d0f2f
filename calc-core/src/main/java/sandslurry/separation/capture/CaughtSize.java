package sandslurry.separation.capture;

/**
 * The grain size of which a lane catches a given share, by the three relations of the band; scour
 * is not counted.
 *
 * @param share the share caught
 * @param idealM size by {@link HazenIdeal1904} [m]
 * @param campDobbinsM size by {@link CampDobbins1946} [m]
 * @param vetterM size by {@link Vetter1940} [m]
 */
public record CaughtSize(double share, double idealM, double campDobbinsM, double vetterM) {}

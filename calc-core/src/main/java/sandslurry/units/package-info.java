/**
 * What a quantity is here, and how it is typed in and written out in metric and US customary units.
 *
 * <p>{@link sandslurry.units.Measure} is the one closed table of units; it parses, prints and
 * bridges between {@code Quantity} objects at the public face and the plain SI numbers of the
 * kernels. The text parser of the units library is never used: it reads some common spellings
 * silently wrong. No conversion factor is written anywhere else.
 */
package sandslurry.units;

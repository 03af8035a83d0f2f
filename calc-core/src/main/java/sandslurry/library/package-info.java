/**
 * The library's face: sand, liquid, pipe and mixture in quantities with units; from them deposition
 * velocity, head loss, settling velocity, lane, duty point and whole designs. Everything given here
 * becomes a field of a design and is checked as one from a file; {@code docs/library.md} shows how.
 */
package sandslurry.library;

package sandslurry.assessment.materials;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;

/**
 * What one correlation of a family says, beside its fellows.
 *
 * @param model the correlation
 * @param estimate its value in the SI unit of the family, and what lay outside its range
 */
public record ModelValue(Correlation model, Estimate estimate) {}

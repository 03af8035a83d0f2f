/** The liquid: water, manure liquor, and how it flows under shear. */
package sandslurry.material.liquid;

/** What is given of sand, liquid and mixture. */
package sandslurry.design.material;

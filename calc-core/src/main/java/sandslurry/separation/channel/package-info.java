/** Open channels and part-full pipes: flow, scour and self-cleansing. */
package sandslurry.separation.channel;

/**
 * How fast the exact mathematics is, beside general-purpose libraries that can do the same.
 *
 * <p>Classes named {@code …Benchmark} are run by JMH ({@code bench/run}); {@code …Time} and {@code
 * …CpuTime} are programs of their own, for machines that are busy with other things: they count the
 * processor time of their threads. In each the library's answer is the peer, never the judge.
 */
package rootwright.bench;

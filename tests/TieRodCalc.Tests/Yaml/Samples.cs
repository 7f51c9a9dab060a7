namespace TieRodCalc.Tests.Yaml;

/// <summary>Files that are sound, to be read as they are or spoiled at one place.</summary>
internal static class Samples
{
    /// <summary>The part lists alone, without the version line.</summary>
    public const string PartLists = """
        materials:
          - {id: st-850, name: heat-treated alloy steel, kind: steel, tensile: 850 MPa, source: invented for the demo}
        inner_ends:
          - id: in-m18l-212
            name: bent inner end, M18 left-hand
            thread: M18x1.5-6g LH
            center_to_tip: 212 mm ± 0.5 mm
            thread_length: 80 mm
            lead: 1.5 mm            # optional: one pitch
            offset: 14 mm           # optional: 0
            max_cut: 40 mm          # optional: 0, must not be cut
            rethread: 0 mm          # optional: how much further up the shank a die can go
            joint: tapered stud     # optional; or: rod end (may be turned by halves)
            material: st-850        # optional: without it strength is not checked, and it says so
            price: 31.00 USD        # optional, on any part; mass likewise
        sleeves:
          - id: sl-8-m18l-58r
            length: 8 in
            inner: {thread: M18x1.5-6H LH, depth: 2 in, bore: closed, countersink: 0.75 mm, witness: 1.5 in}
            outer: {thread: 5/8-18 UNF-2B, depth: 2 in, bore: closed}     # clamp: 1.2 in, where a clamp locks it
            outside: hex 1 in       # optional; or: round 1 in; flats are counted from it
            material: st-850
        outer_ends:
          - {id: re-58r, thread: 5/8-18 UNF-2A, center_to_tip: 2 5/8 in, thread_length: 1 5/8 in, joint: rod end}
          - {id: rk-m14, center_to_face: 2 in, socket: {thread: M14x1.5-6H, depth: 1.2 in, bore: closed}}   # no sleeve
        jam_nuts:
          - {id: jn-m18l, thread: M18x1.5-6H LH, thickness: 9 mm}
          - {id: jn-58r, thread: 5/8-18 UNF-2B, thickness: 3/8 in}

        """;

    /// <summary>A part file.</summary>
    public const string Parts = "tierodcalc: 1\n" + PartLists;

    /// <summary>A job with one rod and nothing else, its part lists of its own.</summary>
    public const string Job = """
        tierodcalc: 1
        job: No. 27 ice-race coupe
        rods:
          - name: left
            side: left
            inner: in-m18l-212
            sleeve: sl-8-m18l-58r
            outer: re-58r
            nuts: {inner: jn-m18l, outer: jn-58r}
            length: 15 3/4 in
            adjust: 3/16 in

        """ + PartLists;

    /// <summary>A job that uses every key.</summary>
    public const string WholeJob = """
        tierodcalc: 1
        job: No. 27 ice-race coupe, narrowed front axle
        units: in                   # what results are shown in; mm beside it
        parts: [../parts/pinewater.yaml]      # files and folders (their *.yaml and *.yml, not deeper), relative to this file
        rules: {engagement: 1.5 diameters, tip_gap: 1/8 in, mark: 1/32 in, allowance: 1/16 in, load: 8 kN, bump: {very_good: 0.01 in, felt: 0.02 in, strongly_felt: 0.03 in, spacing: 10 in}}
        rods:
          - name: left
            side: left
            inner: in-m18l-212
            sleeve: sl-8-m18l-58r
            outer: re-58r
            nuts: {inner: jn-m18l, outer: jn-58r}      # each may be none
            length: 15 3/4 in                          # or {from: [x, y, z], to: [x, y, z]}, or {rod: 16 in, toe: 1/8 in out, want: 1/16 in in}
            adjust: 3/16 in                            # each way; or {shorter: , longer: }
            clocking: 90 deg                           # only where both ends are bent
            rules: {engagement: 28 mm}                 # same keys as the job's, for this rod
            built: {center_to_center: 15.75 in, showing: {inner: 1.2 in, outer: 0.4 in}, cut: {inner: 9/32 in, outer: 0 in}}
        steering:
          layout: rod per side                         # or: one rod between wheels
          left: {arm: 6 in, joint: behind axle, rod_angle: 4 deg}
          right: {axis: [[0 in, -20 in, 5 in],[0 in, -21 in, 15 in]], outer: [-6 in, -20 in, 6 in], inner: [-6 in, -6 in, 6 in]}
          plates: 24 in
          toe: {now: 1/8 in out, want: 1/16 in in}     # total of both wheels; or each: {left: , right: }
        bump:                                          # any number of sheets, oldest first
          - side: left
            gauge: {spacing: 10 in, zeroed: once, grows: outward, resolution: 0.001 in}     # zeroed: once or each step
            readings:
              - {travel: -1 in, front: 0.014 in, rear: 0.009 in}                            # bump positive, ride height not listed
              - {travel: 1 in, front: -0.011 in, rear: -0.004 in}
            then: {outer_raised: 2 mm, rod_longer: 0 mm}                                    # what was changed after this sheet
        corner:                                        # optional points, per side; x forward, y left, z up
          left: {lower: {axis: [[1 in,2 in,3 in],[4 in,5 in,6 in]], ball: [7 in,8 in,9 in]}, upper: {axis: [[1 mm,2 mm,3 mm],[4 mm,5 mm,6 mm]], ball: [1 in,1 in,1 in]}, wheel: [0 in,0 in,0 in]}
          right:
            lower: {axis: [[-6 in, -8 in, 5 in], [6 in, -8 in, 5 in]], ball: [0 in, -20 in, 5 in]}
            upper: {axis: [[-6 in, -10 in, 13 in], [6 in, -10 in, 13 in]], ball: [0 in, -21 in, 15 in]}
            wheel: [0 in, -22 in, 9 in]
            travel: {bump: 2 in, droop: 50 mm}     # from ride height
            steer: 2 in                            # the inner joint, each way
            moves: {outer: {up: 1/2 in, down: 1/4 in}, inner: 5 mm, length: {shorter: 1 in, longer: 3/4 in}}     # each way, or each by itself

        """;

    /// <summary>A job with one rod between the wheels, its length from an existing one, its part lists of its own.</summary>
    public const string OneRod = """
        tierodcalc: 1
        rods:
          - name: cross
            inner: in-m18l-212
            sleeve: sl-8-m18l-58r
            outer: re-58r
            nuts: {inner: jn-m18l, outer: jn-58r}
            length: {rod: 42 in ± 1/16 in, toe: 1/8 in out, want: {each: 0.1 deg in}}
            adjust: 1/8 in
            built: {center_to_center: 41.9 in}
        steering:
          layout: one rod between wheels
          held: left
          left: {axis: {inclination: 8 deg, caster: 5 deg, through: [0 in, 26 in, 0 in]}, outer: [-6 in, 22 in, 1 in], inner: [-6 in, -20 in, 1 in]}
          right: {axis: {inclination: 8 deg, caster: 5 deg, through: [0 in, -24 in, 0 in]}, outer: [-6 in, -20 in, 1 in], inner: [-6 in, 22 in, 1 in]}
          tire: 26 in
          toe: {each: {left: 1/16 in out, right: 0 in}, want: {each: {left: 0 in, right: 0.1 deg in}}}

        """ + PartLists;
}

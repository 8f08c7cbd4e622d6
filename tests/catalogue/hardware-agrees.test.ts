import { describe, expect, it } from "vitest";
import {
  BARS,
  BEARINGS,
  BELTS,
  BOLT_LENGTHS,
  BUTTON_SCREWS,
  CAP_SCREWS,
  COUNTERSUNK_SCREWS,
  ECCENTRICS,
  FITS,
  HEX_SCREWS,
  INSERTS,
  LARGE_WASHERS,
  LOCK_NUTS,
  LOOPS,
  MOTORS,
  NUTS,
  PULLEYS,
  SCREWS,
  SET_SCREWS,
  SHIM_RINGS,
  SMALL_WASHERS,
  SPRINGS,
  STOCK_LENGTHS,
  TABLES,
  THIN_NUTS,
  THREADS,
  THRUST_BEARINGS,
  WASHERS,
  WHEELS,
} from "../../src/catalogue/index.ts";
import { findRow, row, type Table } from "../../src/core/table.ts";

/** Returns the keys of the rows for which the condition does not hold. */
function breaking<V extends Readonly<Record<string, number | string>>>(
  table: Table<V>,
  holds: (values: V, key: string) => boolean,
): string[] {
  return table.rows.filter(({ values, key }) => !holds(values, key)).map(({ key }) => key);
}

describe("threads", () => {
  it("are known wherever a table names one", () => {
    const named = TABLES.flatMap((table) =>
      table.rows.flatMap(({ key, values }) =>
        Object.values(values)
          .flatMap((value) => (typeof value === "string" ? (value.match(/\bM\d+(\.\d+)?\b/g) ?? []) : []))
          .map((thread) => ({ at: `${table.name} ${key}`, thread })),
      ),
    );
    expect(named.length).toBeGreaterThan(50);
    expect(named.filter(({ thread }) => findRow(THREADS, thread) === undefined)).toEqual([]);
  });

  it.each([
    ["cap-screws", CAP_SCREWS],
    ["button-screws", BUTTON_SCREWS],
    ["countersunk-screws", COUNTERSUNK_SCREWS],
    ["hex-screws", HEX_SCREWS],
    ["set-screws", SET_SCREWS],
    ["nuts", NUTS],
    ["thin-nuts", THIN_NUTS],
    ["lock-nuts", LOCK_NUTS],
    ["washers", WASHERS],
    ["large-washers", LARGE_WASHERS],
    ["small-washers", SMALL_WASHERS],
    ["bolt-lengths", BOLT_LENGTHS],
  ] as [string, Table][])("key every row of %s", (_name, table) => {
    expect(table.rows.length).toBeGreaterThan(2);
    expect(table.rows.filter(({ key }) => findRow(THREADS, key) === undefined)).toEqual([]);
  });

  it("lie inside the holes made for them, and the drill between root and outside", () => {
    const ordered = breaking(THREADS, ({ minorDiameter, tapDrill, diameter, fineHole, mediumHole, coarseHole }) => {
      return minorDiameter < tapDrill && tapDrill < diameter && diameter < fineHole && fineHole < mediumHole
        ? mediumHole < coarseHole
        : false;
    });
    expect(ordered).toEqual([]);
  });

  it("have set screws whose key is the one of the thread table", () => {
    expect(breaking(SET_SCREWS, ({ key }, thread) => key === row(THREADS, thread).values.setScrewKey)).toEqual([]);
  });
});

describe("heads, nuts and washers", () => {
  it("have heads wider than the coarse hole under them", () => {
    const wider = (headDiameter: number, thread: string) => headDiameter > row(THREADS, thread).values.coarseHole;
    expect(breaking(CAP_SCREWS, ({ headDiameter }, key) => wider(headDiameter, key))).toEqual([]);
    expect(breaking(BUTTON_SCREWS, ({ headDiameter }, key) => wider(headDiameter, key))).toEqual([]);
    expect(breaking(HEX_SCREWS, ({ acrossFlats }, key) => wider(acrossFlats, key))).toEqual([]);
  });

  it("have washers with the fine hole, small inside normal inside large", () => {
    const fine = (thread: string) => row(THREADS, thread).values.fineHole;
    for (const table of [WASHERS, SMALL_WASHERS, LARGE_WASHERS]) {
      expect(breaking(table, ({ hole, outside }, key) => hole === fine(key) && outside > hole)).toEqual([]);
    }
    expect(breaking(SMALL_WASHERS, (v, key) => v.outside < row(WASHERS, key).values.outside)).toEqual([]);
    expect(breaking(LARGE_WASHERS, (v, key) => v.outside > row(WASHERS, key).values.outside)).toEqual([]);
  });

  it("have small washers that pass into the counterbore of a cap screw from M3 to M5", () => {
    const into = (key: string) => row(SMALL_WASHERS, key).values.outside - row(CAP_SCREWS, key).values.headDiameter;
    for (const key of ["M3", "M4", "M5"]) expect(into(key), key).toBeLessThanOrEqual(1);
  });

  it("share the width across flats between all nuts of a thread, thin below normal below tall", () => {
    expect(breaking(THIN_NUTS, (v, key) => v.acrossFlats === row(NUTS, key).values.acrossFlats)).toEqual([]);
    expect(breaking(THIN_NUTS, (v, key) => v.height < row(NUTS, key).values.height)).toEqual([]);
    expect(breaking(LOCK_NUTS, (v, key) => v.acrossFlats === row(NUTS, key).values.acrossFlats)).toEqual([]);
    expect(breaking(LOCK_NUTS, (v, key) => v.tallHeight > row(NUTS, key).values.height)).toEqual([]);
    expect(breaking(LOCK_NUTS, (v) => v.tallHeight >= v.height)).toEqual([]);
  });

  it("have lengths that rise, and that `stock` prints as they are used", () => {
    expect(Object.keys(STOCK_LENGTHS)).toEqual(BOLT_LENGTHS.rows.map(({ key }) => key));
    for (const [thread, { lengths }] of Object.entries(STOCK_LENGTHS)) {
      expect(
        [...lengths].sort((one, other) => one - other),
        thread,
      ).toEqual(lengths);
      expect(row(BOLT_LENGTHS, thread).values.stock, thread).toBe(lengths.join(" "));
      expect(lengths[0], thread).toBeGreaterThanOrEqual(row(BOLT_LENGTHS, thread).values.shortest);
    }
  });

  it("have inserts that bite: wider than their hole and than their thread", () => {
    const bites = breaking(INSERTS, ({ hole, outside }, key) => {
      const thread = key.split(" ")[0] ?? "";
      return outside > hole && hole > row(THREADS, thread).values.diameter;
    });
    expect(bites).toEqual([]);
  });
});

describe("bearings and rings", () => {
  it("have lands between bore and outside", () => {
    const ordered = breaking(BEARINGS, ({ bore, innerLand, outerLand, outside }) => {
      return bore < innerLand && innerLand < outerLand && outerLand < outside;
    });
    expect(ordered).toEqual([]);
  });

  it("leave both rings a face wider than the corner radius", () => {
    const face = breaking(BEARINGS, ({ bore, innerLand, outerLand, outside, cornerRadius }) => {
      return (innerLand - bore) / 2 > cornerRadius && (outside - outerLand) / 2 > cornerRadius;
    });
    expect(face).toEqual([]);
  });

  it("name an estimate as one: typical, with an outer land at D - 0.2 (D - d)", () => {
    const typical = BEARINGS.rows.filter(({ standing }) => standing === "typical");
    expect(typical.length).toBe(41);
    for (const { key, values, note } of typical) {
      expect(values.outerLand, key).toBeCloseTo(values.outside - 0.2 * (values.outside - values.bore), 1);
      expect(note, key).toContain("estimates");
    }
  });

  it("have a turned ring for each common bore that touches the inner ring only", () => {
    const turned = SHIM_RINGS.rows.filter(({ source }) => source === "common-practice");
    expect(turned.map(({ key }) => key)).toEqual(expect.arrayContaining(["8 x 12 x 1.0", "5 x 8 x 1.0"]));
    for (const { key, values } of turned) {
      const fits = BEARINGS.rows.filter(({ values: each }) => {
        return each.bore === values.hole && Math.floor(each.innerLand) === values.outside;
      });
      expect(fits.length, key).toBeGreaterThan(0);
    }
  });

  it("have thrust bearings whose shoulders stay on their own washer", () => {
    const known = THRUST_BEARINGS.rows.filter(({ standing }) => standing !== "typical");
    expect(known.map(({ key }) => key)).toContain("51100");
    for (const { key, values } of known) {
      expect(values.shaftShoulder, key).toBeGreaterThan(values.bore);
      expect(values.shaftShoulder, key).toBeLessThan(values.outside);
      expect(values.housingShoulder, key).toBeGreaterThan(values.housingBore);
      expect(values.housingBore, key).toBeGreaterThan(values.bore);
    }
  });
});

describe("drive", () => {
  it("has pulleys whose height is hub, two flanges and tooth width, within 0.3", () => {
    const sum = breaking(PULLEYS, ({ height, hubLength, flangeThickness, toothWidth }) => {
      return Math.abs(height - (hubLength + 2 * flangeThickness + toothWidth)) <= 0.3;
    });
    expect(sum).toEqual([]);
  });

  it("has flanges outside the belt, hubs inside the flange, set screws half way up the hub", () => {
    const back = row(BELTS, "2 mm round").values.thickness - row(BELTS, "2 mm round").values.toothHeight;
    expect(breaking(PULLEYS, (v) => v.flangeDiameter > (v.teeth * v.pitch) / Math.PI + 2 * back)).toEqual([]);
    expect(breaking(PULLEYS, (v) => v.hubDiameter <= v.flangeDiameter && v.hubDiameter > v.bore)).toEqual([]);
    expect(breaking(PULLEYS, (v) => v.setScrewFromEnd === v.hubLength / 2)).toEqual([]);
    expect(breaking(PULLEYS, (v, key) => key === `${v.teeth} teeth ${v.pitch} mm`)).toEqual([]);
  });

  it("has the usual 40 teeth pulley", () => {
    expect(row(PULLEYS, "40 teeth 2 mm").values).toEqual({
      teeth: 40,
      pitch: 2,
      flangeDiameter: 28,
      toothWidth: 7,
      flangeThickness: 1,
      hubLength: 7,
      height: 16,
      hubDiameter: 16,
      bore: 8,
      setScrew: "M3",
      setScrewCount: 2,
      setScrewFromEnd: 3.5,
    });
  });

  it("has belts thicker than their teeth, their pitch line in the back, and whole loops", () => {
    expect(breaking(BELTS, (v) => v.thickness > v.toothHeight && v.toothHeight < v.pitch)).toEqual([]);
    expect(breaking(BELTS, (v) => v.pitchLineDistance < v.thickness - v.toothHeight)).toEqual([]);
    expect(breaking(LOOPS, (v, key) => v.length === v.teeth * v.pitch && key === `${v.length}`)).toEqual([]);
    expect(breaking(LOOPS, (v) => Number.isInteger(v.teeth))).toEqual([]);
  });

  it("has lead screws whose lead is starts times pitch", () => {
    expect(breaking(SCREWS, (v) => v.lead === v.starts * v.pitch)).toEqual([]);
    expect(breaking(SCREWS, (v) => v.rootDiameter < v.pitchDiameter && v.pitchDiameter < v.diameter)).toEqual([]);
  });

  it("has motors whose holes lie on the circle, outside the pilot and inside the body", () => {
    expect(breaking(MOTORS, (v) => Math.abs(v.boltSquare * Math.SQRT2 - v.boltCircle) < 0.06)).toEqual([]);
    expect(breaking(MOTORS, (v) => v.boltCircle - v.hole > v.pilotDiameter)).toEqual([]);
    expect(breaking(MOTORS, (v) => v.boltSquare + v.hole < v.body)).toEqual([]);
    expect(breaking(MOTORS, (v) => v.hole >= row(THREADS, v.screw).values.diameter)).toEqual([]);
  });
});

describe("bars, wheels and springs", () => {
  it("has slots that open no narrower than they start and lie deeper than their lip", () => {
    expect(breaking(BARS, (v) => v.slotMouth >= v.slotOpening && v.slotDepth > v.lip && v.threadStart < v.lip)).toEqual(
      [],
    );
    expect(breaking(BARS, (v, key) => v.slotMouth > v.slotOpening === key.startsWith("V "))).toEqual([]);
    expect(breaking(BARS, (v) => row(THREADS, v.mountBolt).values.diameter < v.slotOpening)).toEqual([]);
    expect(breaking(BARS, (v) => v.inertiaStrong >= v.inertiaWeak)).toEqual([]);
  });

  it("has sections lighter than solid aluminium of the same outline", () => {
    const solid = (width: number, height: number) => width * height * 0.0027;
    expect(breaking(BARS, (v) => v.massPerMetre > 0.25 * solid(v.width, v.height))).toEqual([]);
    expect(breaking(BARS, (v) => v.massPerMetre < 0.75 * solid(v.width, v.height))).toEqual([]);
  });

  it("has wheels as wide over the bearings as two bearings and a ring of 1", () => {
    const over = (bearing: string) => 2 * row(BEARINGS, bearing).values.width + 1;
    expect(row(WHEELS, "V 23.9").values.overBearings).toBe(over("625"));
    expect(row(WHEELS, "V 24.4").values.overBearings).toBe(over("625"));
    expect(row(WHEELS, "V 15.2 mini").values.overBearings).toBe(over("MR105"));
  });

  it("has eccentrics that enter the plate, round their bore", () => {
    expect(breaking(ECCENTRICS, (v) => v.plateHole >= v.body && v.body / 2 - v.offset > v.bore / 2)).toEqual([]);
  });

  it("has springs that go over their bolt and close below their free length", () => {
    const bolt = (thread: string) => row(THREADS, thread).values.diameter;
    expect(breaking(SPRINGS, (v) => v.outside - 2 * v.wire >= bolt(v.forThread) + 0.4)).toEqual([]);
    expect(breaking(SPRINGS, (v) => v.totalCoils * v.wire < v.freeLength)).toEqual([]);
  });

  it("has limits in order", () => {
    expect(breaking(FITS, (v) => v.lower < v.upper && v.over < v.upTo)).toEqual([]);
  });
});

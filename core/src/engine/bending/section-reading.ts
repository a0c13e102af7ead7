/** What one layer bears. Strains without unit, stretch positive, at its faces. */
export interface LayerReading {
  readonly name: string;
  readonly forceN: number;
  readonly strain: readonly [number, number];
  /** Greatest stretch that stress goes with: strain less what a fibre has kept. A crushed fibre parts by this sooner. */
  readonly stretch: number;
  /** Greatest squeeze that a fibre has kept, as a positive strain. */
  readonly crushed: number;
  /** Greatest sum of plastic strain, whichever way. */
  readonly accumulated: number;
  readonly slip: number;
  /** Stretched past what its law says parts it. */
  readonly parted: boolean;
}

export interface SectionReading {
  readonly momentNmm: number;
  readonly layers: readonly LayerReading[];
}

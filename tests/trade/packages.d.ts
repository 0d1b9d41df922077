declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(celsius: number): number;
    GetVapPresFromRelHum(celsius: number, humidity: number): number;
    GetHumRatioFromRelHum(celsius: number, humidity: number, pascals: number): number;
    GetMoistAirDensity(celsius: number, humidityRatio: number, pascals: number): number;
    GetStandardAtmPressure(metres: number): number;
    GetStandardAtmTemperature(metres: number): number;
  };
  export default psychrolib;
}

declare module '@lhncbc/ucum-lhc' {
  /** What a conversion gives: no value where the units do not convert. */
  interface Converted {
    readonly status: string;
    readonly toVal: number | null;
  }
  const ucum: {
    readonly UcumLhcUtils: {
      getInstance(): { convertUnitTo(from: string, value: number, to: string): Converted };
    };
  };
  export default ucum;
}

/** The few functions of the library that the tests call. Its unit system is one for the whole module: tests set SI and leave it. */
declare module 'psychrolib' {
  interface Psychrolib {
    readonly IP: number;
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(temperatureC: number): number;
    GetSatHumRatio(temperatureC: number, pressurePa: number): number;
    GetHumRatioFromRelHum(temperatureC: number, relativeHumidity: number, pressurePa: number): number;
    GetHumRatioFromTWetBulb(temperatureC: number, wetBulbC: number, pressurePa: number): number;
    GetTDewPointFromRelHum(temperatureC: number, relativeHumidity: number): number;
    GetTWetBulbFromRelHum(temperatureC: number, relativeHumidity: number, pressurePa: number): number;
    GetMoistAirEnthalpy(temperatureC: number, humidityRatio: number): number;
    GetTDryBulbFromEnthalpyAndHumRatio(enthalpyJkg: number, humidityRatio: number): number;
    GetMoistAirVolume(temperatureC: number, humidityRatio: number, pressurePa: number): number;
    GetMoistAirDensity(temperatureC: number, humidityRatio: number, pressurePa: number): number;
    GetStandardAtmPressure(altitudeM: number): number;
  }
  const psychrolib: Psychrolib;
  export default psychrolib;
}

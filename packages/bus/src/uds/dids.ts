/**
 * @module Data identifiers of ISO 14229-1 (Annex C).
 *
 * Source: `uds/utilities/constants/did.py` and `docs/source/pages/knowledge_base/did.rst` of mdabrowski1990/uds (MIT).
 */

const NAMES: readonly (readonly [number, string])[] = [
  [0xf180, 'BootSoftwareIdentificationDataIdentifier'],
  [0xf181, 'applicationSoftwareIdentificationDataIdentifier'],
  [0xf182, 'applicationDataIdentificationDataIdentifier'],
  [0xf183, 'bootSoftwareFingerprintDataIdentifier'],
  [0xf184, 'applicationSoftwareFingerprintDataIdentifier'],
  [0xf185, 'applicationDataFingerprintDataIdentifier'],
  [0xf186, 'ActiveDiagnosticSessionDataIdentifier'],
  [0xf187, 'vehicleManufacturerSparePartNumberDataIdentifier'],
  [0xf188, 'vehicleManufacturerECUSoftwareNumberDataIdentifier'],
  [0xf189, 'vehicleManufacturerECUSoftwareVersionNumberDataIdentifier'],
  [0xf18a, 'systemSupplierIdentifierDataIdentifier'],
  [0xf18b, 'ECUManufacturingDateDataIdentifier'],
  [0xf18c, 'ECUSerialNumberDataIdentifier'],
  [0xf18d, 'supportedFunctionalUnitsDataIdentifier'],
  [0xf18e, 'VehicleManufacturerKitAssemblyPartNumberDataIdentifier'],
  [0xf18f, 'RegulationXSoftwareIdentificationNumbers'],
  [0xf190, 'VINDataIdentifier'],
  [0xf191, 'vehicleManufacturerECUHardwareNumberDataIdentifier'],
  [0xf192, 'systemSupplierECUHardwareNumberDataIdentifier'],
  [0xf193, 'systemSupplierECUHardwareVersionNumberDataIdentifier'],
  [0xf194, 'systemSupplierECUSoftwareNumberDataIdentifier'],
  [0xf195, 'systemSupplierECUSoftwareVersionNumberDataIdentifier'],
  [0xf196, 'exhaustRegulationOrTypeApprovalNumberDataIdentifier'],
  [0xf197, 'systemNameOrEngineTypeDataIdentifier'],
  [0xf198, 'repairShopCodeOrTesterSerialNumberDataIdentifier'],
  [0xf199, 'programmingDateDataIdentifier'],
  [0xf19a, 'calibrationRepairShopCodeOrCalibrationEquipmentSerialNumberDataIdentifier'],
  [0xf19b, 'calibrationDateDataIdentifier'],
  [0xf19c, 'calibrationEquipmentSoftwareNumberDataIdentifier'],
  [0xf19d, 'ECUInstallationDateDataIdentifier'],
  [0xf19e, 'ODXFileDataIdentifier'],
  [0xf19f, 'EntityDataIdentifier'],
  [0xfa10, 'NumberOfEDRDevices'],
  [0xfa11, 'EDRIdentification'],
  [0xfa12, 'EDRDeviceAddressInformation'],
  [0xff00, 'UDSVersionDataIdentifier'],
  [0xff01, 'ReservedForISO15765-5'],
]

const RANGES: readonly (readonly [number, number, string])[] = [
  [0x0000, 0x00ff, 'ISOSAEReserved'],
  [0x0100, 0xa5ff, 'VehicleManufacturerSpecific'],
  [0xa600, 0xa7ff, 'ReservedForLegislativeUse'],
  [0xa800, 0xacff, 'VehicleManufacturerSpecific'],
  [0xad00, 0xafff, 'ReservedForLegislativeUse'],
  [0xb000, 0xb1ff, 'VehicleManufacturerSpecific'],
  [0xb200, 0xbfff, 'ReservedForLegislativeUse'],
  [0xc000, 0xc2ff, 'VehicleManufacturerSpecific'],
  [0xc300, 0xceff, 'ReservedForLegislativeUse'],
  [0xcf00, 0xefff, 'VehicleManufacturerSpecific'],
  [0xf000, 0xf00f, 'networkConfigurationDataForTractorTrailerApplicationDataIdentifier'],
  [0xf010, 0xf0ff, 'vehicleManufacturerSpecific'],
  [0xf100, 0xf17f, 'identificationOptionVehicleManufacturerSpecificDataIdentifier'],
  [0xf1a0, 0xf1ef, 'identificationOptionVehicleManufacturerSpecific'],
  [0xf1f0, 0xf1ff, 'identificationOptionSystemSupplierSpecific'],
  [0xf200, 0xf2ff, 'periodicDataIdentifier'],
  [0xf300, 0xf3ff, 'DynamicallyDefinedDataIdentifier'],
  [0xf400, 0xf5ff, 'OBDDataIdentifier'],
  [0xf600, 0xf6ff, 'OBDMonitorDataIdentifier'],
  [0xf700, 0xf7ff, 'OBDDataIdentifier'],
  [0xf800, 0xf8ff, 'OBDInfoTypeDataIdentifier'],
  [0xf900, 0xf9ff, 'TachographDataIdentifier'],
  [0xfa00, 0xfa0f, 'AirbagDeploymentDataIdentifier'],
  [0xfa13, 0xfa18, 'EDREntries'],
  [0xfa19, 0xfaff, 'SafetySystemDataIdentifier'],
  [0xfb00, 0xfcff, 'ReservedForLegislativeUse'],
  [0xfd00, 0xfeff, 'SystemSupplierSpecific'],
  [0xff02, 0xffff, 'ISOSAEReserved'],
]

/** The data identifier that holds the vehicle identification number. */
export const VIN_DID: number = 0xf190

const BY_DID: ReadonlyMap<number, string> = new Map(NAMES)

/** Name of a data identifier, or of the range the standard puts it in. */
export function nameOfDid(did: number): string {
  const name = BY_DID.get(did)
  if (name !== undefined) return name
  // In their order: the first that does not end before it is the only one it can stand in.
  let from = 0
  for (let to = RANGES.length; from < to; ) {
    const middle = (from + to) >> 1
    if (did <= (RANGES[middle] as (typeof RANGES)[number])[1]) to = middle
    else from = middle + 1
  }
  const range = RANGES[from]
  return range !== undefined && did >= range[0] ? range[2] : 'ISOSAEReserved'
}

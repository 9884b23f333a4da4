/** An invented list for the demo: the wagons of a travelling puppet theatre. One row is misspelt on purpose. */
export const fleetName = 'sample-fleet.csv'

export const fleet = `name,size,insulation,outLengthM,currentA,supplyV,ambientC,loadedInBundle,fuseA
"stage wagon, foot lights left",0.75 mm²,PVC,4,1.6,12,35,2,5
"stage wagon, foot lights right",1.5 mm²,PVC,7,1.6,12,35,2,5
"stage wagon, moon lamp",1.5 mm²,PVC,5,2.4,12,35,3,5
"stage wagon, curtain motor",2.5 mm²,PVC,3,6.5,12,40,1,10
"stage wagon, thunder sheet shaker",0.5 mm²,PVC,4,8,12,40,4,10
"stage wagon, fog machine fan",18 AWG,XLPE,3,2.1,12,50,1,5
"stage wagon, battery to panel",16 mm²,PVC,2.5,42,12,40,1,60
"stage wagon, work light",1 mm²,PVC,3,1.8,12,30,1,
"costume wagon, heater fan",6 mm²,PVC,5,9,12,35,2,15
"costume wagon, iron's inverter",25 mm²,PVC,1.5,70,12,40,1,100
"costume wagon, mirror lights",20 AWG,PTFE,3,1.2,12,60,6,3
"costume wagon, reading lamp",0.5 mm²,PVC,8,0.4,12,30,1,3
"costume wagon, fridge",4 mm²,PVC,6,5.2,12,35,2,10
"costume wagon, water pump",2.5 mm²,PVC,4,4.4,12,30,1,7.5
"costume wagon, step light",0.35 mm²,PVC,5,0.2,12,30,1,
"ticket wagon, counter lights",1 mm²,PVC,4,2,12,35,2,5
"ticket wagon, bell",22 AWG,PVC,12,0.8,12,30,1,2
"ticket wagon, till",1 mm²,PVC,3,1.5 V,12,30,1,3
"ticket wagon, sign",1.5 mm²,XLPE,8,3.3,24,45,3,7.5
"ticket wagon, winch of the awning",10 mm²,PVC,3,38,24,40,1,125
"ticket wagon, battery to panel",10 mm²,PVC,2,30,24,40,1,40
"trailer, tail lamp left",0.75 mm²,PVC,9,0.42,12,30,4,5
"trailer, tail lamp right",0.75 mm²,PVC,11,0.42,12,30,4,5
"trailer, stop lamps",2.5 mm²,PVC,11,1.75,12,30,4,5
`

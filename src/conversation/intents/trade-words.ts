import nlp from "compromise/two";

/** Words of the trade as tags for the patterns of `intents/said/` (`#LabelTerm`, `#Plate`, ...). */
const tagged: Readonly<Record<string, string>> = {
  LabelTerm:
    "capacitor,shaft,wet end,impeller,diffuser,shaft seal,seal plate,through bolt,thru bolt,nameplate,name plate,class,type,eff",
  Rating:
    "sf,s f,sfa,fla,thp,sfhp,hp,horsepower,service factor,service factor amps,full load amps,full load,max amps,total horsepower,total hp,frame,frame number,frame size,amps,amperage,ampere,volts,voltage,phase,ph,rpm,hz,hertz,ambient,amb,duty,insulation,insulation class,ins,ins class,ins cl,code letter,kva,kva code,capacitance,mfd,flange,square flange,round flange,c face,c flange,y frame,keyed shaft,threaded shaft,keyed,threaded,uprated,up rated,full rated,full rate,up rate,single phase,three phase,single speed,dual voltage,serial,serial number,model number,part number,cont,continuous duty,time rating,thermally protected,thermal protection,energy efficient,service factor horsepower,locked rotor,class b,class f,48y,56y,56j,56c,48j,armazon,marco,factor de servicio,caballos,amperes,amperios,voltios,fase,eje,brida,pf,power factor",
  Plate:
    "label,labels,lable,tag,tags,sticker,plate,nameplate,name plate,data plate,print,printing,writing,decal,placard,etiqueta,placa,plaquita,calcomania,letters,numbers,info plate,markings,marking,lettering,engraving,text",
  Gone: "gone,missing,faded,worn,peeled,painted,rusted,rusty,illegible,unreadable,scratched,bleached,corroded,eaten,rubbed,weathered,scraped,blurry,ripped,torn,melted,burnt,burned,blank,washed,covered,damaged,chewed,disappeared,destroyed,fell,fallen,smudged,smeared,dirty,crusty,unreadable,deteriorated,sun bleached,sun burnt,sunburnt,cracked,ruined,hidden,blocked,broken,off,toast,lost,rust,shredded,bald,bare,borrada,borrado,borrosa,gastada,despintada,oxidada,ilegible,bubbled,coated,caked,smudgy,crusted,colored,charred,tattered,obscured,vanished,perished",
  Staff:
    "person,human,agent,rep,representative,operator,someone,somebody,anyone,anybody,technician,tech,specialist,expert,manager,supervisor,staff,support,salesperson,salesman,employee,guy,human being,people,parts guy,persona,agente,alguien,humano,asesor,tecnico,encargado,representante,vendedor,gerente,customer service,real one,you guys,one of you,live one,coworker,colleague,specialists,representatives,technicians,techs,agents,humans,desk,counter,sales",
};

const words: Record<string, string> = {};
for (const [tag, list] of Object.entries(tagged)) {
  for (const word of list.split(",")) words[word] = tag;
}

nlp.plugin({
  tags: { LabelTerm: {}, Rating: { isA: "LabelTerm" }, Plate: {}, Gone: {}, Staff: {} },
  // Frozen: the tagger would take "fell off" for a verb and lose that a label did it.
  frozen: words,
});

/** compromise with the words of the trade in its lexicon. */
export const language = nlp;

/** True for a tag the patterns may use: one of ours, or compromise's own for numbers. */
export function isTradeTag(name: string): boolean {
  return Object.hasOwn(tagged, name) || name === "Value";
}

# Los pensamientos del instructor: la meta como pregunta, luego el camino: el principio y el
# instrumento que lo dice. Ninguno dice dónde poner la mano.

# De los pasos.
thought-again-aim = Una vez es una sola mirada. ¿Qué mostraría la segunda que la primera no pudo?
thought-again-way = Algunas fallas se descongelan, escurren o se calman mientras el equipo descansa, y vuelven. Compare los manómetros de las dos marchas en el registro.
thought-trace-aim = ¿Qué oirá el detector en un circuito lleno de nitrógeno puro?
thought-trace-way = Nada. Primero entra una traza de refrigerante, unos pocos psi en el manómetro de baja, y encima el nitrógeno.
thought-vacuum-broken-aim = ¿Qué queda dentro cuando un vacío se detiene y no baja más?
thought-vacuum-broken-way = El agua hierve despacio y sale despacio. Un gas seco se la lleva en el siguiente vacío; el decaimiento en el vacuómetro dice si sirvió.
thought-hand-back-aim = ¿Se subiría ya a la camioneta, o hay algo por lo que tendría que volver?
thought-hand-back-way = Dé una vuelta: qué funciona, qué está tapado, qué está anotado, qué se le dijo al cliente.
thought-front-seat-liquid-aim = ¿Dónde debe estar la carga mientras las líneas están abiertas, y cómo llega ahí?
thought-front-seat-liquid-way = El compresor llena lo que tiene la salida cerrada, así que el lado de líquido va primero. El manómetro de baja dice cuánto queda en las líneas.
thought-front-seat-suction-aim = ¿Cuándo está bastante vacío el lado de baja, y qué pasa si el compresor sigue?
thought-front-seat-suction-way = Por debajo de la atmósfera entra aire y el motor pierde su enfriamiento. Siga el manómetro de baja, pare enseguida y vea si vuelve a subir.
thought-open-liquid-aim = ¿Cómo vuelve la carga sin un golpe, y qué debe estar fuera de su camino?
thought-open-liquid-way = Primero se aísla lo que no soporta presión. Después el líquido, despacio, hasta que el manómetro de baja esté bien por encima de la atmósfera.
thought-open-suction-aim = ¿Qué debe mostrar el lado de baja antes de dar paso al lado de vapor?
thought-open-suction-way = Nada debe entrar de golpe: los dos lados de la válvula, casi iguales. Lo dice el manómetro de baja.
thought-open-joint-aim = ¿Qué debe cumplirse en el circuito antes de abrir un abocardado?
thought-open-joint-way = Detrás no debe haber nada: la carga encerrada, la corriente cortada y bloqueada, ninguna presión. El manómetro de baja dice lo que queda; la primera vuelta de la tuerca, el resto.
thought-make-up-aim = ¿Qué hace hermético un abocardado: la fuerza, o la fuerza justa?
thought-make-up-way = Una cara limpia, una gota de aceite, dos llaves y el torque que corresponde al tamaño del tubo. Lo dice la llave de torque.
thought-renew-flare-aim = ¿Por qué fuga una unión que ya se apretó más de una vez?
thought-renew-flare-way = Una cara rayada no sella por más que se apriete. Mírela cuando la unión esté separada.
thought-drier-out-aim = ¿Qué parte de este circuito ya cumplió su tiempo?
thought-drier-out-way = Un filtro deshidratador lleno o que frena el paso no se limpia. Lo dicen lo que ha retenido y las temperaturas antes y después de él.
thought-drier-in-aim = ¿Qué entra al final de todo y queda abierto el menor tiempo?
thought-drier-in-way = Su relleno bebe el aire del lugar en minutos. La flecha va con el líquido, hacia el dispositivo de expansión.
thought-change-filter-aim = ¿Recibe el serpentín interior el aire que necesita?
thought-change-filter-way = Con poco aire un serpentín se congela antes de que falle otra cosa. Compare el aire de retorno con el de suministro.
thought-sniff-aim = Un circuito cerrado no gasta nada. Si falta algo, ¿adónde se fue?
thought-sniff-way = El refrigerante pesa más que el aire: el detector se pasa por debajo de cada unión, despacio y sin viento. El aceite señala un lugar que merece una mirada.
thought-wet-aim = El detector dice que está cerca. ¿Qué dice exactamente dónde?
thought-wet-way = La solución jabonosa crece en el punto mismo, si hay presión detrás.
thought-purge-aim = ¿Qué hay dentro de una manguera que viene del carro, y adónde iría?
thought-purge-way = Aire. Un soplo de refrigerante del equipo lo saca por el múltiple, antes de poner nada en marcha.
thought-purge-centre-aim = ¿Qué hay en la manguera entre el cilindro y el múltiple?
thought-purge-centre-way = Aire, hasta que lo que viene después lo haya sacado.
thought-cooling-aim = ¿Qué no puede decir un equipo en reposo?
thought-cooling-way = En reposo todos los manómetros dicen lo mismo. Solo un circuito en marcha muestra qué hace cada parte; por eso todo lo que mide se pone antes.
thought-lock-out-aim = ¿Quién podría encender esta máquina mientras usted tiene las manos dentro?
thought-lock-out-way = Apagado no es sin tensión. Su propio candado y su etiqueta mantienen lejos la corriente; luego lo comprueba el medidor.
thought-verify-dead-aim = ¿Cómo sabe que no hay tensión?
thought-verify-dead-way = Un capacitor guarda su carga después de apagar. Lo dice el medidor, si antes se probó en algo con tensión.
thought-ventilate-aim = ¿Adónde va el refrigerante que sale aquí, y qué podría encenderlo?
thought-ventilate-way = Pesa más que el aire y se junta abajo. El aire en movimiento lo diluye; lo dice el detector, si está hecho para este refrigerante.

# De las condiciones que deben mantenerse.
thought-steady-run-aim = ¿Desde cuándo se puede creer lo que muestran los manómetros?
thought-steady-run-way = Tras el arranque las presiones y temperaturas se mueven unos diez minutos. Están estables cuando el registro queda plano.
thought-watched-run-aim = ¿Qué hace el equipo si nadie lo toca y alguien lo mira?
thought-watched-run-way = Algunas fallas van y vienen. Un cuarto de hora del manómetro de baja dice más que una mirada.
thought-bubbles-still-aim = ¿Cómo prueba que justo esta unión quedó curada?
thought-bubbles-still-way = Mojada y bajo la presión de prueba, nada debe crecer. El manómetro de baja dice que hay presión; las burbujas, que nada sale.
thought-pressure-test-aim = ¿Cómo sabría que nada se escapa, con un manómetro tan basto?
thought-pressure-test-way = Con la fuente cerrada: anote presión y hora, y espere. Lo que baja con el tiempo estable es una fuga. Lo dice el manómetro de baja.
thought-decay-aim = ¿Qué prueba un vacío profundo mientras la bomba sigue tirando?
thought-decay-way = Nada. Con la bomba aislada, plano es seco y hermético, una subida que se estabiliza es agua, una subida constante es una fuga. Lo dice el vacuómetro, lejos de la bomba.
thought-stay-aim = ¿Qué tiene que quedarse como está, y cuánto tiempo?
thought-stay-way = Una mirada no prueba nada; el tiempo sí. Lo dicen los instrumentos que nombra la tarea.

# De lo que se puede evitar.
thought-protect-aim = ¿Qué podría llegarle a los ojos y a las manos antes de que lo note?
thought-protect-way = El refrigerante líquido quema de frío y una conexión se suelta sin avisar. Lo dice lo que lleva puesto.
thought-drier-arrow-aim = ¿Hacia dónde corre aquí el líquido, y hacia dónde lo quiere el filtro?
thought-drier-arrow-way = La flecha del filtro apunta con el flujo, hacia el dispositivo de expansión.
thought-stand-open-aim = ¿Qué entra en un tubo que queda abierto?
thought-stand-open-way = El aire del lugar con su agua: al aceite y al filtro. Lo dice el reloj; lo que no se trabaja se tapa.
thought-gauge-pressure-aim = ¿Cuál de sus instrumentos muere cuando vuelve la carga?
thought-gauge-pressure-way = El que está hecho para el vacío no soporta presión: se aísla antes de abrir nada.
thought-caps-aim = ¿Cuál es, al final de cuentas, el sello de una válvula?
thought-caps-way = La tapa. Un núcleo y un prensaestopas rezuman, una tapa con su junta no. Lo dice una vuelta alrededor del equipo.
thought-back-seat-aim = ¿Dónde va un vástago en un equipo en servicio?
thought-back-seat-way = En su asiento trasero, fuera del paso del flujo. Vuelta a vuelta, hasta el tope.
thought-kit-aim = ¿Qué hay en este equipo que sea suyo?
thought-kit-way = Mangueras, herramientas y manómetros vuelven al carro, y cada uno se lleva un soplo: el líquido de una manguera se recoge antes en el lado de baja.

# Del estado al entregar.
thought-not-run-aim = La reparación está hecha. ¿Cómo sabe alguien que el equipo está bien?
thought-not-run-way = Solo lo dice una marcha bastante larga para estabilizarse, con el circuito tal como se entrega. Luego sobrecalentamiento y subenfriamiento, calculados otra vez.
thought-charge-share-aim = ¿Cuánto corresponde a este equipo, y cuánto tiene dentro?
thought-charge-share-way = La placa de datos dice lo que corresponde, la báscula lo que entra, y el sobrecalentamiento o el subenfriamiento si está bien. Pasos pequeños, y una espera tras cada uno.
thought-superheat-target-aim = ¿Es el sobrecalentamiento el que pide este clima?
thought-superheat-target-way = La tabla de carga da el objetivo para el aire exterior y el bulbo húmedo interior. Más carga baja el sobrecalentamiento de un orificio fijo; una espera muestra cuánto.
thought-subcooling-end-aim = ¿Cuánto líquido hay delante del dispositivo de expansión?
thought-subcooling-end-way = Con una válvula de expansión, el subenfriamiento dice la carga: presión de líquido y línea de líquido, contra la placa de datos.
thought-permanent-gas-aim = ¿Qué más hay en el circuito además de refrigerante y aceite?
thought-permanent-gas-way = El aire y el nitrógeno no se condensan: se quedan en el condensador y suben la presión de alta. Solo un vacío los saca.
thought-water-aim = ¿Está seco, o solo lo pareció un momento?
thought-water-way = El agua se esconde en el aceite y en el filtro y sale despacio. Lo dice un decaimiento que se estabiliza por encima del vacío de la bomba, en el vacuómetro.
thought-drier-water-aim = ¿Cuánta vida gastó el filtro en el aire del lugar?
thought-drier-water-way = Su relleno toma agua mientras está abierto. Lo dice el reloj.
thought-lost-aim = ¿Adónde se fue la carga?
thought-lost-way = La báscula y la hoja de trabajo dicen lo que entró y salió.
thought-tight-aim = ¿Cómo sabe que es hermético a la presión con que trabaja?
thought-tight-way = El detector por debajo de cada unión que se tocó, luego solución jabonosa, con el equipo en marcha.
thought-drier-drop-aim = ¿Llega el líquido como salió?
thought-drier-drop-way = Donde el líquido se estrangula, se enfría. Lo dicen un termómetro antes del filtro y otro después.

# De la hoja de trabajo.
thought-diagnosis-aim = ¿Qué explica todas las lecturas que tiene, y no solo una?
thought-diagnosis-way = La presión de succión dice lo que recibe el serpentín interior. El sobrecalentamiento y el subenfriamiento juntos dicen si el refrigerante falta, está frenado o sobra.
thought-standing-aim = ¿Qué dice un equipo que todavía no se ha encendido?
thought-standing-way = En reposo la presión es la de saturación a la temperatura del aire, mientras haya líquido. Lo dicen el manómetro de baja y el aire exterior.
thought-superheat-aim = ¿Llega vapor al compresor, y a qué distancia del líquido?
thought-superheat-way = Temperatura de la línea de succión menos saturación a la presión de succión. Lo dicen un termómetro en la línea de succión y el manómetro de baja, en el mismo momento.
thought-subcooling-aim = ¿Llega líquido al dispositivo de expansión, y con qué margen?
thought-subcooling-way = Saturación a la presión de líquido menos temperatura de la línea de líquido. Lo dicen el manómetro de alta y un termómetro en la línea de líquido, en el mismo momento.
thought-target-superheat-aim = ¿Qué sobrecalentamiento sería el correcto con este clima y este cuarto?
thought-target-superheat-way = La tabla de carga: bulbo seco exterior y bulbo húmedo interior. Lo dicen dos termómetros y la tabla.
thought-vacuum-aim = ¿Qué tan profundo era cuando contaba?
thought-vacuum-way = Cuenta el final del decaimiento, con la bomba aislada. Lo dice el vacuómetro.
thought-record-aim = ¿Quién querrá saber cuánto refrigerante fue adónde?
thought-record-way = La ley pide un registro, y el próximo técnico una razón. Lo dice la báscula.
thought-readings-aim = ¿Con qué comparará cuando algo haya cambiado?
thought-readings-way = Lecturas del equipo estable, todas de los mismos minutos. Lo dicen los manómetros y la pinza amperimétrica.
thought-temperatures-aim = ¿Qué temperaturas mostrarían dónde trabaja el circuito y dónde no?
thought-temperatures-way = Un termómetro antes y otro después de cada parte que debe o no debe cambiarla, leídos cuando se hayan calmado.
